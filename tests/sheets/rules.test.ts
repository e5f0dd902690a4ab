import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue.js';
import type { PlanLabel } from '../../src/core/input.js';
import { PLAN } from '../../src/plan/table.js';
import { starterSheets } from '../../src/sheets/index.js';
import { SOURCE_HELP } from '../../src/sheets/provenance.js';
import type { StarterSheet } from '../../src/sheets/sheet.js';
import { address } from '../../taskpane/workbook/grid/place.js';
import { placeOf } from './shown.js';

const VOLATILE = /\b(?:NOW|TODAY|RAND|RANDBETWEEN|RANDARRAY|OFFSET|INDIRECT|CELL|INFO)\(/;
/** A share by which a figure may be off stands beside the same label, with limits of its own. */
const SHARE = 'Share by which the figure may be off, up and down; 0 where you are sure of it.';
const ids = new Set<string>(catalogue.map(({ id }) => id));

const formulasOf = ({ rows }: StarterSheet) => rows.flat().flatMap(({ formula }) => (formula ? [formula] : []));

/** Every cell to fill in that has limits, with the formulas of its own row and those that stand above a whole list. */
const limited = ({ rows }: StarterSheet) =>
  rows.flatMap((row, r) =>
    row.flatMap((cell, c) => {
      const { limit } = cell.validation ?? {};
      return limit ? [{ cell, limit, place: address(r, c), row }] : [];
    }),
  );

const planRows = ({ rows }: StarterSheet) =>
  rows.flatMap((row) => {
    const label: PlanLabel | undefined = Object.values(PLAN).find((one) => one.label === row[0]?.text);
    const isPlan = label && row.some(({ validation }) => validation?.message.startsWith(`${label.label} must`));
    return isPlan ? [{ label, row }] : [];
  });

describe.each(starterSheets)('the starter sheet $name', (starter) => {
  it('uses no volatile function, and of this add-in only functions that it has', () => {
    const formulas = formulasOf(starter);
    expect(formulas.filter((formula) => VOLATILE.test(formula))).toEqual([]);
    const called = formulas.flatMap((formula) => [...formula.matchAll(/POWDER\.([A-Z0-9]+)/g)].map(([, id]) => id));
    expect(called.filter((id) => !ids.has(id ?? ''))).toEqual([]);
    expect(called.length).toBeGreaterThan(10);
    expect(called.length).toBeLessThan(120);
  });

  it('judges every figure that is to be filled in by the limits that are declared for it', () => {
    const formulas = formulasOf(starter);
    const cells = limited(starter);
    expect(cells.length).toBeGreaterThan(10);
    const judged = new Set<string>();
    const wrong = cells.filter(({ limit, place, row }) => {
      const [, letters = ''] = /^([A-Z]+)/.exec(place) ?? [];
      const own = row.some(({ formula = '' }) => formula.includes(`(${place}<${limit[0]})+(${place}>${limit[1]})`));
      const range = `${letters}\\d+:${letters}\\d+`;
      const key = `${letters} ${limit}`;
      if (own || judged.has(key)) return false;
      const list = new RegExp(
        `${range}>=${limit[0]}\\)\\*\\(${range}<=${limit[1]}\\)|MIN\\(${range}\\)<${limit[0]}\\)\\+\\(MAX\\(${range}\\)>${limit[1]}\\)`,
      );
      if (!formulas.some((formula) => list.test(formula))) return true;
      judged.add(key);
      return false;
    });
    expect(wrong.map(({ place }) => place)).toEqual([]);
    for (const { cell } of cells) expect(cell.note).toBeTruthy();
  });

  it('keeps to the plan table’s limits where it states a plan', () => {
    for (const { label, row } of planRows(starter)) {
      const inputs = row.filter(({ style, note }) => style === 'input' && note !== SHARE && note !== SOURCE_HELP);
      for (const { validation } of inputs) expect(validation?.limit).toEqual(label.limit);
    }
  });

  it('gives each figure that stands alone a unit beside it, and room for its source', () => {
    for (const { row, place, cell } of limited(starter)) {
      if (row.filter(({ validation }) => validation?.limit).length > 2) continue;
      if (cell.note === SHARE || !row[0]?.text || row[0].style !== 'label') continue;
      expect(
        row.some(({ style }) => style === 'unit'),
        place,
      ).toBe(true);
      expect(
        row.some(({ note }) => note === SOURCE_HELP),
        place,
      ).toBe(true);
    }
  });

  it('frames every figure that is to be filled in, and no other', () => {
    for (const cell of starter.rows.flat()) {
      if (cell.number !== undefined) expect(cell.style).toBe('input');
      if (cell.formula !== undefined) expect(cell.style).not.toBe('input');
      if (cell.validation) expect(cell.style).toBe('input');
    }
  });

  it('shows each figure to fill in with all of its digits, and a part of a hL that a run takes', () => {
    const cut = starter.rows.flatMap((row, r) =>
      row.flatMap(({ style, number, format }, c) => {
        if (style !== 'input' || number === undefined || format === undefined) return [];
        const [, decimals = ''] = /\.([0#]+)/.exec(format) ?? [];
        const shown = format.endsWith('%') ? 100 * number : number;
        const off = Math.abs(Number(shown.toFixed(decimals.length)) - shown);
        return off > 1e-9 * Math.abs(shown) ? [`${address(r, c)} ${number} as ${format}`] : [];
      }),
    );
    expect(cut).toEqual([]);
    const losses = starter.rows.filter(([cell]) => cell?.text === PLAN.runBeerLoss.label);
    for (const row of losses) expect(['#,##0.0', '0.0%']).toContain(row[1]?.format);
  });

  it('says that the case is invented, carries its cautions, and names no currency', () => {
    const texts = starter.rows.flat().flatMap(({ text, formula }) => [text ?? formula ?? '']);
    expect(texts.some((text) => /invented/.test(text) && /four starter sheets/.test(text))).toBe(true);
    // It says so only while it is so.
    const fixed = starter.rows.flat().flatMap(({ text = '' }) => (/invented|Nebbelgrund/i.test(text) ? [text] : []));
    expect(fixed).toEqual([]);
    expect(starter.rows.flat().some(({ style }) => style === 'caution')).toBe(true);
    const formats = starter.rows.flat().flatMap(({ format }) => (format ? [format] : []));
    expect([...texts, ...formats].filter((text) => /[€$£¥]|EUR|USD/.test(text))).toEqual([]);
  });

  it('knows figures of its example by whole numbers, which are written alike in every country', () => {
    const keys = formulasOf(starter).flatMap((formula) =>
      /"count"|SUM\(\(LEN\(/.test(formula) ? [...formula.matchAll(/"[^"]*\|[^"]*"/g)].map(([key]) => key) : [],
    );
    expect(keys.filter((key) => /[|"]\d+\.\d/.test(key))).toEqual([]);
  });

  it('defines names that lie on it', () => {
    for (const [name, place] of Object.entries(starter.names)) {
      expect(name).toMatch(/^[a-z][A-Za-z]{3,}$/);
      expect(placeOf(place.split(':').at(-1) ?? '').row).toBeLessThan(starter.rows.length);
    }
  });
});

describe('the starter sheets together', () => {
  it('are the four', () => {
    expect(starterSheets.map(({ key }) => key)).toEqual(['dosing', 'trial', 'quotes', 'year']);
  });

  it('share no defined name, so that all fit into one workbook', () => {
    const names = starterSheets.flatMap((starter) => Object.keys(starter.names));
    expect(names.length).toBe(new Set(names).size);
  });
});
