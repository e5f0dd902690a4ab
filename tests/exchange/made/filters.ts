import { empty, formula, inline, number, sheetData } from '../cells.js';
import { looks, solid } from '../looks.js';
import type { Made, MadeSheet } from '../make.js';

const ROWS = [2, 3, 4, 5, 6, 7, 8, 9];
const hidden = (...rows: readonly number[]) => Object.fromEntries(rows.map((row) => [row, 'hidden="1"']));

/** A table with a filter on it: a text, a figure, a cell on a ground; a sum of what is shown stands beside it. */
function filtered(name: string, columns: string, out: readonly number[], byHand: readonly number[] = []): MadeSheet {
  const shown = ROWS.filter((n) => !out.includes(n) && !byHand.includes(n)).reduce((sum, n) => sum + n * 10, 0);
  const cells = [
    ...['Beer', 'Dose', 'Mark'].map((title, n) => inline(`${'BCD'[n]}1`, title)),
    ...ROWS.flatMap((n) => [
      ...(n === 9 ? [] : [inline(`B${n}`, n % 2 ? 'Lager' : 'Wheat beer')]),
      number(`C${n}`, n * 10),
      empty(`D${n}`, n < 5 ? 1 : 0),
    ]),
    formula('F1', 'SUBTOTAL(109,C2:C9)', shown),
  ];
  const inside = `<autoFilter ref="B1:D9">${columns}</autoFilter>`;
  return { name, inside: `${sheetData(cells, hidden(...out, ...byHand))}${inside}` };
}

const column = (id: number, inside: string) => `<filterColumn colId="${id}">${inside}</filterColumn>`;

/** Filters by values, by comparing, by pattern and by colour, one of nothing, and those of kinds that the grid has not. */
export const filters: Made = {
  styles: looks({
    fills: [solid('FFEB9C')],
    cells: [{ fill: 0 }],
    conditions: [
      '<dxf><fill><patternFill patternType="solid"><fgColor rgb="FFFFEB9C"/><bgColor rgb="FFFFEB9C"/></patternFill></fill></dxf>',
      '<dxf><font><color rgb="FF9C0006"/></font></dxf>',
    ],
  }),
  sheets: [
    filtered(
      'Values',
      column(0, '<filters blank="1"><filter val="Lager"/></filters>') +
        column(1, '<filters><filter val="30"/><filter val="50"/><filter val="90"/></filters>'),
      [2, 4, 6, 7, 8],
    ),
    filtered(
      'Compared',
      column(
        1,
        '<customFilters and="1"><customFilter operator="greaterThanOrEqual" val="30"/><customFilter operator="lessThan" val="60"/></customFilters>',
      ),
      [2, 6, 7, 8, 9],
    ),
    filtered(
      'Pattern',
      column(
        0,
        '<customFilters><customFilter val="*beer"/><customFilter operator="notEqual" val=" "/></customFilters>',
      ),
      [9],
    ),
    filtered('Ground', column(2, '<colorFilter dxfId="0"/>'), [5, 6, 7, 8, 9]),
    filtered('Ink', column(0, '<colorFilter dxfId="1" cellColor="0"/>'), ROWS),
    filtered('Nothing', '', []),
    filtered('By hand', '', [], [4]),
    filtered('Days', column(1, '<filters><dateGroupItem year="1900" dateTimeGrouping="year"/></filters>'), []),
    filtered('Largest', column(1, '<top10 val="3"/>'), []),
    filtered('Average', column(1, '<dynamicFilter type="aboveAverage"/>'), []),
    filtered('Order', column(0, '<customFilters><customFilter operator="lessThan" val="M"/></customFilters>'), []),
  ],
};
