import type { Texts } from './dictionary.js';

/** The words for sharing a sheet, in German. */
export const share: Texts['share'] = {
  heading: 'Ein Blatt weitergeben',
  intro:
    'Wer die Datei ohne Powderbook öffnet, sieht Fehler statt der Antworten. Eine Kopie mit Werten zeigt die Zahlen: das gerade offene Blatt, jede Formel durch ihren Wert ersetzt. Das Blatt selbst bleibt, wie es ist.',
  button: 'Kopie mit Werten anlegen',
  ending: 'Werte',
  busy: 'Wird kopiert …',
  done: (name) => `Die Kopie steht auf dem Blatt ${name}.`,
};
