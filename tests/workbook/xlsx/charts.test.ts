import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { starterSheets } from '../../../src/sheets/index.js';
import { readCharts } from '../../../taskpane/workbook/grid/charts.js';
import { gridOfBook } from '../../../taskpane/workbook/grid/ofBook.js';
import { workbookOf } from '../../../taskpane/workbook/grid/place.js';
import { bookOfGrid } from '../../../taskpane/workbook/grid/toBook.js';
import { parseXml } from '../../../taskpane/workbook/xlsx/leanXml.js';
import { writeBook } from '../../../taskpane/workbook/xlsx/writeBook.js';
import { calculateStarter, calculateWorkbook } from '../headless.js';
import { opened, readOf, relations, rows } from './handMade.js';

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

it('a chart inside of cells keeps its place to the pixel', () => {
  const inset = { left: 12, top: 7, right: 31, bottom: 5 };
  const chart = {
    title: 'Cost',
    kind: 'bars' as const,
    across: { title: 'Beer' },
    upwards: { title: 'Cost per hL' },
    series: [{ name: 'Now', across: 'A1:A2', upwards: 'B1:B2' }],
    place: 'D2:G9',
    inset,
  };
  const rows = [1, 2].map((value) => [{ value: `Beer ${value}` }, { value }]);
  const bytes = writeBook({ sheets: [{ name: 'Costs', rows, widths: [], headerRows: 0, names: {}, charts: [chart] }] });
  expect(readOf(bytes).book.sheets[0]?.charts?.[0]).toMatchObject({ place: 'D2:G9', inset });
});

const DRAWING = 'http://schemas.openxmlformats.org/drawingml/2006';
const reference = (name: string, range: string) =>
  `<c:${name}><c:numRef><c:f>Runs!${range}</c:f></c:numRef></c:${name}>`;

/** A file with one chart over rows of figures, which stands where the anchor says. */
const across = (anchor: string, inside: string) =>
  opened({
    sheets: [`${inside}<drawing r:id="rId1"/>`],
    names: ['Runs'],
    more: {
      'xl/worksheets/_rels/sheet1.xml.rels': relations(['rId1', 'drawing', '../drawings/drawing1.xml']),
      'xl/drawings/drawing1.xml': `<xdr:wsDr xmlns:xdr="${DRAWING}/spreadsheetDrawing" xmlns:a="${DRAWING}/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships">${anchor}</xdr:wsDr>`,
      'xl/drawings/_rels/drawing1.xml.rels': relations(['rId1', 'chart', '../charts/chart1.xml']),
      'xl/charts/chart1.xml': `<c:chartSpace xmlns:c="${DRAWING}/chart" xmlns:a="${DRAWING}/main"><c:chart><c:plotArea><c:scatterChart><c:ser><c:idx val="0"/><c:order val="0"/>${reference('tx', '$A$2')}${reference('xVal', '$B$1:$E$1')}${reference('yVal', '$B$2:$E$2')}</c:ser><c:axId val="1"/><c:axId val="2"/></c:scatterChart>${[1, 2].map((id) => `<c:valAx><c:axId val="${id}"/></c:valAx>`).join('')}</c:plotArea></c:chart></c:chartSpace>`,
    },
  }).book;

const figures = rows(
  ...[1, 2].map(
    (row) =>
      `<c r="A${row}" t="inlineStr"><is><t>row ${row}</t></is></c>${['B', 'C', 'D', 'E'].map((column, n) => `<c r="${column}${row}"><v>${(n + 1) ** row}</v></c>`).join('')}`,
  ),
);
const frame = `<xdr:graphicFrame><a:graphic><a:graphicData><c:chart xmlns:c="${DRAWING}/chart" r:id="rId1"/></a:graphicData></a:graphic></xdr:graphicFrame>`;
const corner = (name: string, column: number, row: number, beside = 0) =>
  `<xdr:${name}><xdr:col>${column}</xdr:col><xdr:colOff>${beside}</xdr:colOff><xdr:row>${row}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:${name}>`;
const twoCells = `<xdr:twoCellAnchor>${corner('from', 6, 1)}${corner('to', 10, 12)}${frame}</xdr:twoCellAnchor>`;
// Small units of drawings: 9525 to a pixel, 12700 to a point (ECMA-376, part 1, 20.1.2.1).
const oneCell = (wide: number, high: number, beside = 0) =>
  `<xdr:oneCellAnchor>${corner('from', 1, 1, beside)}<xdr:ext cx="${wide}" cy="${high}"/>${frame}</xdr:oneCellAnchor>`;
const series = { named: 'A2', across: 'B1:E1', upwards: 'B2:E2' };

describe('a chart of a file', () => {
  it('over rows is drawn from them, follows them, and is written over rows again', async () => {
    const book = across(twoCells, figures);
    expect(book.sheets[0]?.charts).toMatchObject([{ kind: 'lines', place: 'G2:J12', series: [series] }]);
    const again = await calculateWorkbook(gridOfBook(book));
    expect(readCharts(again.grid)[0]?.series[0]).toMatchObject({
      name: 'row 2',
      across: [1, 2, 3, 4],
      upwards: [1, 4, 9, 16],
    });
    workbookOf(again.grid).getActiveSheet().insertColumnsBefore(2, 1);
    const saved = readOf(writeBook(bookOfGrid(again.grid))).book.sheets[0]?.charts;
    again.dispose();
    expect(saved).toMatchObject([{ place: 'H2:K12', series: [{ named: 'A2', across: 'B1:F1', upwards: 'B2:F2' }] }]);
  });

  it('that stands at one cell covers the columns and rows that its size covers', () => {
    const place = (anchor: string, more = '') => across(anchor, more + figures).sheets[0]?.charts?.[0]?.place;
    // 64 pixels to a column and 15 points to a row, where nothing else is said.
    expect(place(oneCell(4 * 64 * 9525, 10 * 15 * 12_700))).toBe('B2:E11');
    // A start within the column reaches further.
    expect(place(oneCell(4 * 64 * 9525, 10 * 15 * 12_700, 60 * 9525))).toBe('B2:F11');
    const wide = '<cols><col min="2" max="2" width="40.71" customWidth="1"/></cols>';
    expect(place(oneCell(285 * 9525, 10 * 15 * 12_700), wide)).toBe('B2:B11');
    const high = figures.replace('<row r="2">', '<row r="2" ht="60" customHeight="1">');
    expect(across(oneCell(64 * 9525, 75 * 12_700), high).sheets[0]?.charts?.[0]?.place).toBe('B2:B3');
  });
});
