import { pagesOf } from '../../../src/sheets/pages.js';
import { MARGINS } from '../../../src/sheets/paper.js';
import type { StarterSheet } from '../../../src/sheets/sheet.js';
import { columnLetters, fixed } from '../a1.js';

const TURNED = { portrait: 'Portrait', landscape: 'Landscape' } as const;

/** Queues the print set-up: legible pages, broken between parts. The paper stays the user's own, A4 or Letter. */
export function setUpPrinting(sheet: Excel.Worksheet, starter: StarterSheet): void {
  const { pageLayout, horizontalPageBreaks, verticalPageBreaks } = sheet;
  const { turned, scale, areas, rows, columns, rowBreaks, columnBreaks } = pagesOf(starter);
  pageLayout.orientation = TURNED[turned];
  pageLayout.zoom = { scale };
  pageLayout.setPrintMargins('Inches', MARGINS);
  pageLayout.setPrintArea(sheet.getRanges(areas.join(',')));
  if (rows) pageLayout.setPrintTitleRows(fixed(rows));
  pageLayout.setPrintTitleColumns(fixed(columns));
  for (const row of rowBreaks) horizontalPageBreaks.add(`A${row + 1}`);
  for (const column of columnBreaks) verticalPageBreaks.add(`${columnLetters(column)}1`);
}
