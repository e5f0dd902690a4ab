import { describe, expect, it } from 'vitest';
import { starterSheets } from '../../src/sheets/index.js';
import { CellValueType } from '../../taskpane/workbook/engine/core.js';
import { address, workbookOf } from '../../taskpane/workbook/grid/place.js';
import { measureOf } from '../../taskpane/workbook/grid/shownNumber.js';
import { calculateStarter } from './headless.js';

/** The font of a cell without a size of its own, 11 points. */
const measure = measureOf(44 / 3);

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

  it('has room in its columns for every number that it shows', async () => {
    const { grid, dispose } = await calculateStarter(starter);
    const shown = workbookOf(grid).getActiveSheet().getSheet();
    const tooWide: string[] = [];
    let numbers = 0;
    for (let r = 0; r <= shown.getLastRowWithContent(); r++) {
      for (let c = 0; c <= shown.getLastColumnWithContent(); c++) {
        const { t, v } = shown.getCell(r, c) ?? {};
        if (t !== CellValueType.NUMBER || typeof v !== 'string') continue;
        numbers++;
        if (measure(v) > shown.getColumnWidth(c) - 4) tooWide.push(`${address(r, c)}: ${v}`);
      }
    }
    dispose();
    expect(numbers).toBeGreaterThan(30);
    expect(tooWide).toEqual([]);
  });
});
