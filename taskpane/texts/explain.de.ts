import type { Texts } from './dictionary.js';

/** The words that explain the selected cell, in German. */
export const explain: Texts['explain'] = {
  heading: 'Wie diese Zelle zustande kommt',
  errorOrigin: 'Dorthin gehen, wo dieser Fehler beginnt',
  beginsHere: 'Er beginnt in dieser Zelle.',
  result: 'Antwort',
  method: 'Methode und Quellen',
  leftOut: 'fehlt in der Formel',
  typed: 'in die Formel getippt',
  from: (place) => `aus ${place}`,
  goToInput: (label, place) => `${label}: zu ${place} gehen`,
  size: (rows, columns) => `${rows} × ${columns} Zellen`,
  values: (all, odd) => `${all} Zellen; unüblich oder abgelehnt: ${odd}`,
  each: 'Jeder Wert',
  more: (count) => `und ${count} weitere`,
  judgement: { usual: 'üblich', unusual: 'unüblich', refused: 'abgelehnt', error: 'Fehler' },
  unknown: {
    function: (what) => `${what} rechnet nur die Arbeitsmappe selbst; das Fenster kann dem nicht folgen.`,
    reference: (what) => `Das Fenster kann ${what} nicht folgen.`,
    operator: (what) => `„${what}“ rechnet nur die Arbeitsmappe selbst; das Fenster kann dem nicht folgen.`,
    missing: (what) => `${what} ist in der Arbeitsmappe nicht zu finden oder hat keine eigenen Zellen.`,
  },
};
