import type { Texts } from './dictionary.js';

/** The words around the charts of a sheet, in German. */
export const charts: Texts['charts'] = {
  heading: (count) => `Diagramme dieses Blatts: ${count}`,
  series: 'Reihe',
  reach: (name, from, to, count) => `${name}: ${from} bis ${to} (${count} Zahlen).`,
  one: (name, value) => `${name}: ${value}.`,
  nothing: 'Noch gibt es nichts zu zeichnen: Die Zellen hinter diesem Diagramm sind leer oder abgelehnt.',
};
