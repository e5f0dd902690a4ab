import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { starterSheets } from '../../src/sheets/index.js';
import type { SheetCell, StarterSheet } from '../../src/sheets/sheet.js';
import { excelHost } from '../../taskpane/host/excel.js';
import { excelModel } from './excelModel.js';

const model = excelModel();
beforeAll(() => {
  vi.stubGlobal('Excel', model.Excel);
});
afterAll(() => {
  vi.unstubAllGlobals();
});

/** What one starter sheet takes: the longest request, and the actions of all. */
async function taken(starter: StarterSheet) {
  const before = model.sent.length;
  await excelHost().insertSheet(starter);
  const sent = model.sent.slice(before);
  return {
    bytes: Math.max(...sent.map(({ bytes }) => bytes)),
    actions: sent.reduce((sum, { actions }) => sum + actions, 0),
  };
}

const page = readFileSync(new URL('../../docs/excel.md', import.meta.url), 'utf8');
/** What the page says of a sheet. */
function stated(name: string) {
  const [, kilobytes = '', actions = ''] =
    new RegExp(`^\\| ${name} \\| (\\d+) \\| ([\\d,]+) \\|$`, 'm').exec(page) ?? [];
  return { bytes: Number(kilobytes) * 1000, actions: Number(actions.replace(',', '')) };
}

/** Above what was measured, but not by so much that it says nothing. */
function expectNear(measured: number, limit: number) {
  expect(measured).toBeLessThanOrEqual(limit);
  expect(measured).toBeGreaterThan(limit * 0.75);
}

describe('a starter sheet, inserted through Excel’s own object model', () => {
  it.each(starterSheets)('$name takes few and short requests, as docs/excel.md has it', async (starter) => {
    const { bytes, actions } = await taken(starter);
    expect(bytes).toBeLessThan(1_000_000);
    expect(actions).toBeLessThan(2000);
    expectNear(bytes, stated(starter.name).bytes);
    expectNear(actions, stated(starter.name).actions);
  });

  it('takes hardly more actions for a log of 2,000 rows than for one of 20', async () => {
    const [first] = starterSheets as readonly [StarterSheet];
    const row = (index: number): SheetCell[] => [
      { number: index, style: 'input', format: '0.0' },
      { number: 2 * index, style: 'input', format: '0.00' },
      { formula: `=POWDER.DRYMASS(A${index + 1},B${index + 1})`, style: 'result', format: '0.00' },
    ];
    const log = (length: number) => ({ ...first, rows: Array.from({ length }, (_, index) => row(index)), charts: [] });
    const long = await taken(log(2000));
    expect(long.bytes).toBeLessThan(1_000_000);
    expect(long.actions).toBeLessThan((await taken(log(20))).actions + 100);
  });
});
