import type { SheetChart } from '../../../src/sheets/sheet.js';
import type { BookSheet } from './book.js';
import { rectangleOf } from './readPlaces.js';
import { CHART, chartPart, DRAWING } from './writeChart.js';
import { COMMENTS_TYPE, noteParts, VML_TYPE } from './writeNotes.js';
import { RELATIONSHIPS, related } from './writeParts.js';
import { element, part } from './writeXml.js';

const SPREADSHEET_DRAWING = 'http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing';

/** Of the small unit of drawings in a pixel. */
export const PIXEL = 9525;

const corner = (name: string, [column, across]: readonly [number, number], [row, down]: readonly [number, number]) =>
  element(
    `xdr:${name}`,
    {},
    element('xdr:col', {}, String(column)),
    element('xdr:colOff', {}, String(Math.round(across * PIXEL))),
    element('xdr:row', {}, String(row)),
    element('xdr:rowOff', {}, String(Math.round(down * PIXEL))),
  );

/** Where a chart stands over the cells. */
function anchor({ place, inset, title }: SheetChart, number: number): string {
  const { top = 0, left = 0, bottom = 14, right = 7 } = rectangleOf(place) ?? {};
  const begins = [
    [left, inset?.left ?? 0],
    [top, inset?.top ?? 0],
  ] as const;
  // Without an inset the chart ends where the next cell begins.
  const ends = inset
    ? ([
        [right, inset.right],
        [bottom, inset.bottom],
      ] as const)
    : ([
        [right + 1, 0],
        [bottom + 1, 0],
      ] as const);
  return element(
    'xdr:twoCellAnchor',
    {},
    corner('from', ...begins),
    corner('to', ...ends),
    element(
      'xdr:graphicFrame',
      { macro: '' },
      element(
        'xdr:nvGraphicFramePr',
        {},
        element('xdr:cNvPr', { id: number + 1, name: `Chart ${number}`, descr: title }),
        element('xdr:cNvGraphicFramePr'),
      ),
      element('xdr:xfrm', {}, element('a:off', { x: 0, y: 0 }), element('a:ext', { cx: 0, cy: 0 })),
      element(
        'a:graphic',
        {},
        element('a:graphicData', { uri: CHART }, element('c:chart', { 'xmlns:c': CHART, 'r:id': `rId${number}` })),
      ),
    ),
    element('xdr:clientData'),
  );
}

const drawingPart = (anchors: readonly string[]): string =>
  part(
    element('xdr:wsDr', { 'xmlns:xdr': SPREADSHEET_DRAWING, 'xmlns:a': DRAWING, 'xmlns:r': RELATIONSHIPS }, ...anchors),
  );

/** The kinds of the parts that charts bring, by how their names begin. */
const KINDS = { charts: 'drawingml.chart', drawings: 'drawing' } as const;

/** The parts of all charts and notes in a workbook, each sheet's drawing among them. */
export function drawingParts(sheets: readonly BookSheet[]): Readonly<Record<string, string>> {
  const parts: Record<string, string> = {};
  let written = 0;
  sheets.forEach((sheet, index) => {
    const charts = sheet.charts ?? [];
    const notes = noteParts(sheet, index + 1);
    const drawn = charts.length > 0;
    if (!drawn && notes.relations.length === 0) return;
    const drawing = `drawing${index + 1}.xml`;
    const targets = charts.map((chart) => {
      written += 1;
      parts[`xl/charts/chart${written}.xml`] = chartPart(sheet, chart);
      return [`${RELATIONSHIPS}/chart`, `../charts/chart${written}.xml`] as const;
    });
    Object.assign(parts, notes.parts);
    parts[`xl/worksheets/_rels/sheet${index + 1}.xml.rels`] = related([
      ...(drawn ? [[`${RELATIONSHIPS}/drawing`, `../drawings/${drawing}`] as const] : []),
      ...notes.relations,
    ]);
    if (!drawn) return;
    parts[`xl/drawings/${drawing}`] = drawingPart(charts.map((chart, at) => anchor(chart, at + 1)));
    parts[`xl/drawings/_rels/${drawing}.rels`] = related(targets);
  });
  return parts;
}

/** What the list of the file's parts says of them. */
export const drawingTypes = (parts: Readonly<Record<string, string>>): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.keys(parts).flatMap((name) => {
      if (/^xl\/comments\d+\.xml$/.test(name)) return [[`/${name}`, COMMENTS_TYPE]];
      if (name.endsWith('.vml')) return [[`/${name}`, VML_TYPE]];
      const kind = KINDS[/^xl\/(charts|drawings)\/[^/]+$/.exec(name)?.[1] as keyof typeof KINDS];
      return kind ? [[`/${name}`, `application/vnd.openxmlformats-officedocument.${kind}+xml`]] : [];
    }),
  );
