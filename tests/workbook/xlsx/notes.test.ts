import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it, onTestFinished } from 'vitest';
import { gridOfBook } from '../../../taskpane/workbook/grid/ofBook.js';
import { workbookOf } from '../../../taskpane/workbook/grid/place.js';
import { bookOfGrid } from '../../../taskpane/workbook/grid/toBook.js';
import type { BookCell } from '../../../taskpane/workbook/xlsx/book.js';
import { writeBook } from '../../../taskpane/workbook/xlsx/writeBook.js';
import { calculateWorkbook } from '../headless.js';
import { readOf } from './handMade.js';

const TEXT = ' Two lines,\n“quoted” & <marked> _x0041_';
const remarked: BookCell = { value: 1, remark: TEXT, note: 'A hint', validation: { kind: 'number', message: 'No.' } };
const sheet = (rows: readonly (readonly (BookCell | undefined)[] | undefined)[]) => ({
  ...{ name: 'S', rows, widths: [], names: {}, headerRows: 0 },
});

describe('notes in a file', () => {
  it('are comments with boxes of the older form, of which the sheet and the list of parts know', () => {
    const parts = unzipSync(
      writeBook({ sheets: [sheet([[{ value: 1 }]]), sheet([undefined, [undefined, remarked]])] }),
    );
    const text = (name: string) => strFromU8(parts[name] as Uint8Array);
    // ECMA-376, part 1: 18.7 says what the part of comments holds, 18.3.1.52 how a sheet names their boxes.
    expect(text('xl/comments2.xml')).toContain('<comment ref="B2" authorId="0">');
    expect(text('xl/drawings/notes2.vml')).toContain('<x:Row>1</x:Row><x:Column>1</x:Column>');
    expect(text('xl/worksheets/sheet2.xml')).toMatch(/<legacyDrawing r:id="rId1"\/><\/worksheet>$/);
    expect(text('xl/worksheets/_rels/sheet2.xml.rels')).toContain('Target="../comments2.xml"');
    expect(text('[Content_Types].xml')).toContain('PartName="/xl/comments2.xml"');
    expect(text('[Content_Types].xml')).toContain('PartName="/xl/drawings/notes2.vml"');
    expect(parts['xl/comments1.xml']).toBeUndefined();
    expect(text('xl/worksheets/sheet1.xml')).not.toContain('legacyDrawing');
  });

  it('come back with their words, beside the hint of the cell’s rule', () => {
    const { book, leftOut } = readOf(writeBook({ sheets: [sheet([undefined, [undefined, remarked]])] }));
    expect(book.sheets[0]?.rows[1]?.[1]).toMatchObject({ value: 1, remark: TEXT.trim(), note: 'A hint' });
    expect(leftOut).toEqual([]);
  });

  it('move with their cells, and are in the file where they stand then', async () => {
    const open = await calculateWorkbook(
      gridOfBook({ sheets: [sheet([[{ value: 1, remark: 'moves' }], [{ remark: 'alone' }]])] }),
    );
    onTestFinished(() => open.dispose());
    workbookOf(open.grid).getActiveSheet().insertRowsBefore(0, 2);
    workbookOf(open.grid).getActiveSheet().insertColumnsBefore(0, 1);
    const { rows } = bookOfGrid(open.grid).sheets[0] ?? { rows: [] };
    expect([rows[2]?.[1]?.remark, rows[3]?.[1]?.remark]).toEqual(['moves', 'alone']);
    workbookOf(open.grid).getActiveSheet().deleteRows(2, 1);
    expect(
      bookOfGrid(open.grid).sheets[0]?.rows.flatMap((row) => (row ?? []).flatMap((cell) => cell?.remark ?? [])),
    ).toEqual(['alone']);
  });
});
