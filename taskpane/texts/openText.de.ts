import type { Texts } from './dictionary.js';

const figure = (value: number) => value.toLocaleString('de-DE');

/** The words for opening a file of text, in German. */
export const text: Texts['open']['text'] = {
  title: (file) => `${file} auf ein neues Blatt setzen?`,
  confirm: 'Auf ein neues Blatt setzen',
  done: (file) => `${file} steht auf einem neuen Blatt.`,
  understood: 'So wurde die Datei verstanden. Ändern Sie, was nicht stimmt; die Datei selbst bleibt, wie sie ist.',
  separator: 'Trennzeichen',
  separators: { '\t': 'Tabulator', ';': 'Semikolon ;', '|': 'Strich |', ',': 'Komma ,' },
  decimal: 'Dezimalzeichen',
  point: 'Punkt 1.5',
  comma: 'Komma 1,5',
  order: 'Datum',
  orders: { dmy: 'Tag, Monat, Jahr', mdy: 'Monat, Tag, Jahr', ymd: 'Jahr, Monat, Tag' },
  headerRows: 'Titelzeilen',
  encoding: 'Zeichen',
  encodings: {
    'utf-8': 'UTF-8',
    'utf-16le': 'UTF-16',
    'utf-16be': 'UTF-16, Big-Endian',
    'windows-1252': 'Windows-1252 (Westeuropa)',
  },
  open: (number) =>
    `${number} lässt sich auf zwei Arten lesen, und nichts in der Datei entscheidet es: Sehen Sie das Dezimalzeichen an.`,
  openDate: (date) =>
    `${date} lässt sich auf zwei Arten lesen, und nichts in der Datei entscheidet es: Sehen Sie die Folge von Tag und Monat an.`,
  preview: 'Die ersten Zeilen der Datei',
  size: (rows, columns) => `Zeilen: ${figure(rows)}. Spalten: ${figure(columns)}.`,
  column: (number) => `Spalte ${number}`,
  kindOf: (title) => `Art von ${title}`,
  kinds: {
    number: 'Zahlen',
    date: 'Tage',
    moment: 'Tage mit Uhrzeit',
    time: 'Uhrzeiten',
    text: 'Text',
    blank: 'leer',
  },
  asRead: 'wie verstanden',
  texts: (count) => ` Zellen, die Text bleiben: ${figure(count)}.`,
};
