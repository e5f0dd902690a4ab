import { describe, expect, it } from 'vitest';
import { starterSheets } from '../../src/sheets/index.js';
import { address } from '../../taskpane/workbook/grid/place.js';
import { calculateStarter } from './headless.js';

describe.each(starterSheets)('the starter sheet $name in the grid', (starter) => {
  it('shows no error in any cell, and a value for every formula that does not judge a blank', async () => {
    const sheet = await calculateStarter(starter);
    const judgesBlank = (formula: string) => {
      const [, first = ''] = /^=IF\(LEN\(([A-Z]+\d+):[A-Z]+\d+\)=0,"",POWDER\.RANGECHECK/.exec(formula) ?? [];
      return first !== '' && sheet.at(first).value === null;
    };
    const formulas = starter.rows.flatMap((row, r) =>
      row.flatMap((cell, c) => (cell.formula && !judgesBlank(cell.formula) ? [address(r, c)] : [])),
    );
    expect(formulas.length).toBeGreaterThan(5);
    const wrong = formulas
      .map((place) => sheet.at(place))
      .filter(({ value }) => value === null || (typeof value === 'string' && value.startsWith('#')));
    sheet.dispose();
    expect(wrong).toEqual([]);
  });
});
