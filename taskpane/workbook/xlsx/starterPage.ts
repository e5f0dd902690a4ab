import { pagesOf } from '../../../src/sheets/pages.js';
import { MARGINS } from '../../../src/sheets/paper.js';
import type { StarterSheet } from '../../../src/sheets/sheet.js';
import type { Attributes, PageSetup } from './pageSetup.js';

export const OUR_MARGINS: Attributes = Object.fromEntries(
  Object.entries(MARGINS).map(([side, inches]) => [side, String(inches)]),
);

/** The print set-up of a starter sheet, as a file has it. */
export function pageOfStarter(starter: StarterSheet): PageSetup {
  const { turned, scale, ...places } = pagesOf(starter);
  return { paper: { orientation: turned, scale: String(scale) }, margins: OUR_MARGINS, grows: true, ...places };
}
