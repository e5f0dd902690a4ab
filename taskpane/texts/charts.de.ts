import type { Texts } from './dictionary.js';

/** The words around the charts of a sheet, in German. */
export const charts: Texts['charts'] = {
  series: 'Reihe',
  reach: (name, from, to, count) => `${name}: ${from} bis ${to} (${count} Zahlen).`,
  one: (name, value) => `${name}: ${value}.`,
  nothing: 'Noch gibt es nichts zu zeichnen: Die Zellen hinter diesem Diagramm sind leer oder abgelehnt.',
  heading: 'Diagramm',
  draw: 'Markierte Spalten zeichnen',
  kinds: { lines: 'Linien', points: 'Punkte', bars: 'Balken' },
  go: 'Zu einem Diagramm gehen',
  keys: 'Pfeiltasten bewegen dieses Diagramm, mit Umschalt ändern sie seine Größe. Entf entfernt es, Esc führt zurück zu den Zellen.',
  remove: 'Diagramm löschen',
  column: (letters) => `Spalte ${letters}`,
  over: {
    lines: (upwards, across) => `${upwards} über ${across}`,
    points: (upwards, across) => `${upwards} über ${across}`,
    bars: (upwards, across) => `${upwards} nach ${across}`,
  },
  twoColumns:
    'Ein Diagramm braucht zwei Spalten: Markieren Sie, was waagrecht aufgetragen wird, und rechts davon die Zahlen, die senkrecht aufgetragen werden, mit ihren Titeln.',
  tooMany: (most, given) =>
    `Ein Diagramm fasst neben der ersten bis zu ${most} Spalten mit Zahlen; markiert sind ${given}. Markieren Sie weniger.`,
};
