import type { PageSetup } from './pageSetup.js';
import { element, escaped } from './writeXml.js';

/** The numbers of the last column and row that a sheet of a file has: a break goes all the way. */
const [LAST_COLUMN, LAST_ROW] = [16_383, 1_048_575];

function breaksPart(name: string, places: readonly number[], max: number): string {
  const count = places.length;
  const breaks = places.map((id) => element('brk', { id, max, man: 1 }));
  return count > 0 ? element(name, { count, manualBreakCount: count }, ...breaks) : '';
}

/** The set-up of print: as the file has it that the sheet comes from, or else legible. */
export function pageParts(page: PageSetup): string[] {
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
