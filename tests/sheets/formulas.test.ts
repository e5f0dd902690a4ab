import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { starterSheets } from '../../src/sheets/index.js';
import { address } from '../../taskpane/workbook/grid/place.js';
import { CellError, call } from '../functions/answers.js';
import { cellsOf, placeOf, type Shown, shown } from './shown.js';

/** A formula that is one call, or one column of one call. */
const CALL = /^=(?:INDEX\()?POWDER\.([A-Z0-9]+)\(([^()]*)\)(?:,0,(\d+)\))?$/;
/** The same over a list: its unit above, and an answer in each row that counts. */
const OF_LIST =
  /^=IF\(ISTEXT\((?<counted>[A-Z]+\d+:[A-Z]+\d+)\),"[^"]*",IF\(\k<counted>,(?<call>POWDER\.[A-Z0-9]+\([^()]*\)),""\)\)$/;
const PLACE = /^[A-Z]+\d+(?::[A-Z]+\d+)?$/;

/** Split at commas that stand in no text. */
const argumentsOf = (written: string): string[] => written.match(/"[^"]*"|[^,]+/g) ?? [];

const argument = (sheet: Shown, written: string): unknown => {
  if (written.startsWith('"')) return written.slice(1, -1);
  if (!PLACE.test(written)) return Number(written);
  const range = sheet.range(written);
  return written.includes(':') ? range : range[0]?.[0];
};

/** What the function answers when a host calls it with what the sheet shows in its arguments. */
function expected(sheet: Shown, formula: string): unknown[][] | undefined {
  const { counted, call: own } = OF_LIST.exec(formula)?.groups ?? {};
  if (counted !== undefined) {
    const answers = expected(sheet, `=${own}`);
    return sheet.range(counted).map(([one], row) => (one === 1 ? [answers?.[row]?.[0]] : []));
  }
  const [, id = '', written = '', column] = CALL.exec(formula) ?? [];
  if (id === '') return undefined;
  const answer = call(id, ...argumentsOf(written).map((one) => argument(sheet, one)));
  if (answer instanceof CellError) throw new Error(`${formula}: ${answer.message}`);
  const rows = Array.isArray(answer) ? (answer as unknown[][]) : [[answer]];
  return column === undefined ? rows : rows.map((row) => [row[Number(column) - 1]]);
}

const same = (one: unknown, other: unknown): boolean =>
  typeof one === 'number' && typeof other === 'number'
    ? Math.abs(one - other) <= 1e-9 * Math.max(Math.abs(one), Math.abs(other))
    : (one ?? '') === (other ?? '');

describe.each(starterSheets)('the formulas of $name', (starter) => {
  let sheet: Shown;
  beforeAll(async () => {
    sheet = await shown(starter);
  });
  afterAll(() => sheet.dispose());

  it('show what the library answers to a direct call, in every cell that an answer fills', () => {
    const wrong: string[] = [];
    let compared = 0;
    starter.rows.forEach((row, r) => {
      row.forEach(({ formula = '' }, c) => {
        const answer = expected(sheet, formula);
        answer?.forEach((line, down) => {
          line.forEach((value, right) => {
            const place = address(r + down, c + right);
            compared++;
            if (!same(sheet.cell(place), value)) wrong.push(`${place}: ${sheet.cell(place)} is not ${value}`);
          });
        });
      });
    });
    expect(wrong).toEqual([]);
    expect(compared).toBeGreaterThan(40);
  });

  it('read nothing but cells of the sheet that hold something or wait for it', () => {
    const empty = starter.rows.flatMap((row) =>
      row.flatMap(({ formula = '' }) =>
        (formula.match(/[A-Z]+\d+(?::[A-Z]+\d+)?(?![\d(])/g) ?? [])
          .filter((reference) => !formula.includes(`"${reference}`))
          .filter((reference) =>
            cellsOf(reference)
              .flat()
              .every((cell) => {
                const { row: r, column } = placeOf(cell);
                return starter.rows[r]?.[column] === undefined;
              }),
          ),
      ),
    );
    expect(empty).toEqual([]);
  });
});
