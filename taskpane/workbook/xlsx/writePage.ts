import type { BookSheet } from './book.js';
import { element, escaped } from './writeXml.js';

const USUAL_MARGINS = { left: 0.5, right: 0.5, top: 0.6, bottom: 0.6, header: 0.3, footer: 0.3 };

/** The numbers of the last column and row that a sheet of a file has: a break goes all the way. */
const [LAST_COLUMN, LAST_ROW] = [16_383, 1_048_575];

function breaksPart(name: string, places: readonly number[], max: number): string {
  const count = places.length;
  const breaks = places.map((id) => element('brk', { id, max, man: 1 }));
  return count > 0 ? element(name, { count, manualBreakCount: count }, ...breaks) : '';
}

/** Whether the sheet's print is made to fit a number of pages. */
export const fitsPages = ({ page }: BookSheet): boolean => page === undefined || page.fits === true;

/** The set-up of print: one page wide, or as the file has it that the sheet comes from. */
export function pageParts({ page, print = 'landscape' }: BookSheet): string[] {
  if (!page)
    return [
      element('pageMargins', USUAL_MARGINS),
      element('pageSetup', { orientation: print, fitToWidth: 1, fitToHeight: 0 }),
    ];
  const { options, margins, paper, words, rowBreaks = [], columnBreaks = [] } = page;
  return [
    options ? element('printOptions', options) : '',
    margins ? element('pageMargins', margins) : '',
    paper ? element('pageSetup', paper) : '',
    words
      ? element('headerFooter', {}, ...Object.entries(words).map(([name, text]) => element(name, {}, escaped(text))))
      : '',
    breaksPart('rowBreaks', rowBreaks, LAST_COLUMN),
    breaksPart('colBreaks', columnBreaks, LAST_ROW),
  ];
}
