import { afterEach, describe, expect, it } from 'vitest';
import { emptied } from '../../src/sheets/emptied.js';
import { starterSheets } from '../../src/sheets/index.js';
import { address } from '../../taskpane/workbook/grid/place.js';
import { type Calculated, calculateStarter } from '../workbook/headless.js';
import { shortened } from './shortened.js';
import { answersOf, placeOf } from './shown.js';

let book: Calculated;
afterEach(() => book?.dispose());

const ERROR = /^#[A-Z/0]+[!?A]?$/;

describe.each(starterSheets)('the starter sheet $name without the example’s figures', (starter) => {
  it('names in each answer what is missing, and shows no error above the calculations', async () => {
    const sheet = emptied(shortened(starter, 12));
    book = await calculateStarter(sheet);
    const answers = answersOf(sheet);
    expect(answers.length).toBeGreaterThan(3);
    for (const answer of answers) {
      const shown = String(book.at(answer).value);
      expect(shown, answer).toMatch(/^see [A-Z]+\d+$/);
      const named = placeOf(shown.slice(4));
      expect(sheet.rows[named.row]?.[named.column]?.style, shown).toBe('input');
    }
    const last = Math.max(...answers.map((answer) => placeOf(answer).row));
    const errors = sheet.rows
      .slice(0, last + 1)
      .flatMap((row, r) =>
        row.flatMap((_, c) => (ERROR.test(String(book.at(address(r, c)).value ?? '')) ? [address(r, c)] : [])),
      );
    expect(errors).toEqual([]);
    expect(String(book.at('A2').value)).toBe('No input is the example’s.');
  });
});
