import { around } from '../../host/region.js';
import type { SheetContents } from '../../host/workbookContents.js';
import { looksLikeNumber } from '../../workbook/entry/textNumber.js';
import type { Writing } from '../../workbook/entry/writing.js';
import type { Finding } from './finding.js';

/** Tables in which numbers stand as text, so that no formula counts them: one finding for each table. */
export function textNumbers(
  { name, row: firstRow, column: firstColumn, formulas, values }: SheetContents,
  writing: Writing,
): readonly Finding[] {
  const isText = (row: number, column: number) => {
    const content = formulas[row]?.[column];
    return typeof content === 'string' && !content.startsWith('=') && looksLikeNumber(content, writing);
  };
  const isEmpty = (row: number, column: number) => (values[row]?.[column] ?? '') === '';
  const widest = values.reduce((most, line) => Math.max(most, line.length), 0);
  const most = { top: 0, left: 0, bottom: values.length - 1, right: widest - 1 };
  const told = new Set<string>();
  const findings: Finding[] = [];
  for (const [row, line] of formulas.entries()) {
    for (const column of line.keys()) {
      if (told.has(`${row},${column}`) || !isText(row, column)) continue;
      const { top, bottom, left, right } = around(row, column, isEmpty, most);
      const cells: (readonly [row: number, column: number])[] = [];
      for (let r = top; r <= bottom; r += 1)
        for (let c = left; c <= right; c += 1) if (isText(r, c)) cells.push([r, c]);
      for (const cell of cells) told.add(cell.join());
      const columns = cells.map(([, c]) => c);
      findings.push({
        kind: 'text',
        place: {
          kind: 'range',
          sheet: name,
          top: firstRow + row,
          bottom: firstRow + (cells.at(-1)?.[0] ?? row),
          left: firstColumn + columns.reduce((least, c) => Math.min(least, c), column),
          right: firstColumn + columns.reduce((last, c) => Math.max(last, c), column),
        },
        subject: String(formulas[row]?.[column]).trim(),
        figures: { value: cells.length, unit: '', places: [] },
      });
    }
  }
  return findings;
}
