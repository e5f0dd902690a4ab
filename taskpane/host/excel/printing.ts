import type { StarterSheet } from '../../../src/sheets/sheet.js';

const TURNED = { portrait: 'Portrait', landscape: 'Landscape' } as const;

/** Queues the print set-up: one page wide, as many as it takes down. The paper stays the user's own, A4 or Letter. */
export function setUpPrinting({ pageLayout }: Excel.Worksheet, { headerRows, print }: StarterSheet): void {
  if (headerRows > 0) pageLayout.setPrintTitleRows(`$1:$${headerRows}`);
  if (!print) return;
  pageLayout.orientation = TURNED[print];
  pageLayout.zoom = { horizontalFitToPages: 1 };
}
