import { a1 } from '../../host/a1.js';
import type { BookSheet } from './book.js';
import { MAIN, RELATIONSHIPS } from './writeParts.js';
import { element, escapedText, part } from './writeXml.js';

/** Of what a sheet shows beside its cells, ECMA-376, part 4, 19.1: notes are boxes in that older form. */
const [VML, OLDER, SHEETS] = [
  'urn:schemas-microsoft-com:vml',
  'urn:schemas-microsoft-com:office:office',
  'urn:schemas-microsoft-com:office:excel',
];
export const COMMENTS_TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml.comments+xml';
export const VML_TYPE = 'application/vnd.openxmlformats-officedocument.vmlDrawing';

interface Note {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

/** The notes of a sheet, row by row. */
export const notesOf = ({ rows }: BookSheet): readonly Note[] =>
  rows.flatMap((row, r) =>
    (row ?? []).flatMap((cell, c) => (cell?.remark ? [{ row: r, column: c, text: cell.remark }] : [])),
  );

/** ECMA-376, part 1, 18.7: the texts. */
const commentsPart = (notes: readonly Note[]): string =>
  part(
    element(
      'comments',
      { xmlns: MAIN },
      element('authors', {}, '<author></author>'),
      element(
        'commentList',
        {},
        ...notes.map(({ row, column, text }) =>
          element(
            'comment',
            { ref: a1(row, column), authorId: 0 },
            element('text', {}, element('r', {}, element('t', { 'xml:space': 'preserve' }, escapedText(text)))),
          ),
        ),
      ),
    ),
  );

/** A box of two columns and four rows, hidden until the mouse is over its cell. */
const box = ({ row, column }: Note, number: number): string =>
  element(
    'v:shape',
    {
      id: `note${number}`,
      type: '#note',
      style: 'position:absolute;visibility:hidden',
      fillcolor: '#ffffe1',
      'o:insetmode': 'auto',
    },
    element('v:fill', { color2: '#ffffe1' }),
    element('v:path', { 'o:connecttype': 'none' }),
    element('v:textbox'),
    element(
      'x:ClientData',
      { ObjectType: 'Note' },
      element('x:MoveWithCells'),
      element('x:SizeWithCells'),
      element('x:Anchor', {}, [column + 1, 15, row, 2, column + 3, 15, row + 4, 4].join(', ')),
      element('x:AutoFill', {}, 'False'),
      element('x:Row', {}, String(row)),
      element('x:Column', {}, String(column)),
    ),
  );

const boxesPart = (notes: readonly Note[]): string =>
  element(
    'xml',
    { 'xmlns:v': VML, 'xmlns:o': OLDER, 'xmlns:x': SHEETS },
    element(
      'v:shapetype',
      { id: 'note', coordsize: '21600,21600', 'o:spt': 202, path: 'm,l,21600r21600,l21600,xe' },
      element('v:stroke', { joinstyle: 'miter' }),
      element('v:path', { gradientshapeok: 't', 'o:connecttype': 'rect' }),
    ),
    ...notes.map((note, index) => box(note, index + 1)),
  );

/** The parts of a sheet's notes, and how the sheet points at them. */
export function noteParts(sheet: BookSheet, number: number) {
  const notes = notesOf(sheet);
  if (notes.length === 0) return { parts: {}, relations: [] };
  const [comments, boxes] = [`comments${number}.xml`, `notes${number}.vml`];
  return {
    parts: { [`xl/${comments}`]: commentsPart(notes), [`xl/drawings/${boxes}`]: boxesPart(notes) },
    relations: [
      [`${RELATIONSHIPS}/vmlDrawing`, `../drawings/${boxes}`],
      [`${RELATIONSHIPS}/comments`, `../${comments}`],
    ] as const,
  };
}
