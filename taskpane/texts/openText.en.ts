const figure = (value: number) => value.toLocaleString('en-GB');

/** The words for opening a file of text, in English. */
export const text = {
  title: (file: string) => `Put ${file} on a new sheet?`,
  confirm: 'Put on a new sheet',
  done: (file: string) => `${file} stands on a new sheet.`,
  understood: 'This is how the file was understood. Change what is wrong; the file itself stays as it is.',
  separator: 'Separator',
  separators: { '\t': 'tabulator', ';': 'semicolon ;', '|': 'bar |', ',': 'comma ,' },
  decimal: 'Decimal mark',
  point: 'point 1.5',
  comma: 'comma 1,5',
  order: 'Dates',
  orders: { dmy: 'day, month, year', mdy: 'month, day, year', ymd: 'year, month, day' },
  headerRows: 'Rows of titles',
  encoding: 'Letters',
  encodings: {
    'utf-8': 'UTF-8',
    'utf-16le': 'UTF-16',
    'utf-16be': 'UTF-16, big-endian',
    'windows-1252': 'Windows-1252 (Western Europe)',
  },
  open: (number: string) =>
    `${number} can be read in two ways, and nothing in the file settles it: look at the decimal mark.`,
  openDate: (date: string) =>
    `${date} can be read in two ways, and nothing in the file settles it: look at the order of dates.`,
  preview: 'The first rows of the file',
  size: (rows: number, columns: number) => `Rows: ${figure(rows)}. Columns: ${figure(columns)}.`,
  column: (number: number) => `Column ${number}`,
  kindOf: (title: string) => `Kind of ${title}`,
  kinds: {
    number: 'numbers',
    date: 'dates',
    moment: 'dates with times',
    time: 'times',
    text: 'text',
    blank: 'blank',
  },
  asRead: 'as understood',
  texts: (count: number) => ` Cells that stay text: ${figure(count)}.`,
};
