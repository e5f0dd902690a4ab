import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { starterSheets } from '../../../src/sheets/index.js';
import { gridOfBook } from '../../../taskpane/workbook/grid/ofBook.js';
import { bookOfGrid } from '../../../taskpane/workbook/grid/toBook.js';
import { parseXml } from '../../../taskpane/workbook/xlsx/leanXml.js';
import { writeBook } from '../../../taskpane/workbook/xlsx/writeBook.js';
import { calculateStarter, calculateWorkbook } from '../headless.js';
import { readOf } from './handMade.js';

const chartParts = (bytes: Uint8Array) =>
  Object.entries(unzipSync(bytes))
    .filter(([name]) => /charts|drawings|worksheets\/_rels/.test(name))
    .map(([name, data]) => [name, strFromU8(data)] as const);

describe.each(starterSheets)('the charts of the starter sheet $name in a file', (starter) => {
  it('are those that the sheet declares, with the figures of their cells, and come back the same', async () => {
    const { grid, dispose } = await calculateStarter(starter);
    const first = writeBook(bookOfGrid(grid));
    dispose();
    const { book, leftOut } = readOf(first);
    expect(leftOut).toEqual([]);
    expect(book.sheets[0]?.charts).toEqual(starter.charts);
    const parts = chartParts(first);
    for (const [, text] of parts) expect(parseXml(text)).toBeTruthy();
    const charts = parts.filter(([name]) => name.startsWith('xl/charts/'));
    expect(charts.length).toBe(starter.charts?.length ?? 0);
    for (const [, text] of charts) expect(text.match(/<c:v>-?\d/g)?.length).toBeGreaterThan(1);
    const again = await calculateWorkbook(gridOfBook(book));
    const second = writeBook(bookOfGrid(again.grid));
    again.dispose();
    expect(chartParts(second).map(([name]) => name)).toEqual(parts.map(([name]) => name));
    expect(readOf(second).book.sheets[0]?.charts).toEqual(starter.charts);
  });
});
