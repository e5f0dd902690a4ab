import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue.js';
import type { PlanLabel } from '../../src/core/input.js';
import { PLAN } from '../../src/plan/table.js';
import { starterSheets } from '../../src/sheets/index.js';
import type { SheetCell, StarterSheet } from '../../src/sheets/sheet.js';
import { placeOf } from './shown.js';

const VOLATILE = /\b(?:NOW|TODAY|RAND|RANDBETWEEN|RANDARRAY|OFFSET|INDIRECT|CELL|INFO)\(/;
const JUDGED = /POWDER\.RANGECHECK\("([A-Z]+)","([^"]+)",([A-Z]+\d+)(?::([A-Z]+\d+))?\)/;
/** A share by which a figure may be off stands beside the same label, with limits of its own. */
const SHARE = 'Share by which the figure may be off, up and down; 0 where you are sure of it.';
const ids = new Set<string>(catalogue.map(({ id }) => id));

const formulasOf = ({ rows }: StarterSheet) => rows.flat().flatMap(({ formula }) => (formula ? [formula] : []));
const shownUnit = (unit: string) => (['fraction', 'as given'].includes(unit) ? '' : unit);

interface Judged {
  readonly declared: {
    readonly limit?: readonly [number, number];
    readonly unit?: string;
    readonly of?: readonly string[];
  };
  readonly cells: readonly SheetCell[];
  readonly row: readonly SheetCell[];
}

/** The input cells that a sheet has judged, each with the input that the judgement names. */
const judgedRows = ({ rows }: StarterSheet): Judged[] =>
  rows.flatMap((row) =>
    row.flatMap(({ formula = '' }) => {
      const [, id, label, first = '', last = first] = JUDGED.exec(formula) ?? [];
      if (!id) return [];
      const inputs = Object.values(catalogue.find((one) => one.id === id)?.inputs ?? {});
      const own =
        inputs.find((input) => input.label === label) ?? Object.values(PLAN).find((one) => one.label === label);
      const declared = own as Judged['declared'];
      const [from, to] = [placeOf(first), placeOf(last)];
      const cells = rows.slice(from.row, to.row + 1).flatMap((line) => line.slice(from.column, to.column + 1));
      return [{ declared, cells, row: formula.startsWith('=POWDER') ? row : [] }];
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

  it('keeps to the declared limits in every cell that it judges', () => {
    const judged = judgedRows(starter);
    expect(judged.length + planRows(starter).length).toBeGreaterThan(10);
    for (const { declared, cells } of judged) {
      const inputs = cells.filter(({ style }) => style === 'input');
      expect(inputs.length).toBe(cells.length);
      for (const { validation, note } of inputs) {
        expect(note).toBeTruthy();
        if (declared.of) expect(validation?.of).toEqual(declared.of);
        else expect(validation?.limit).toEqual(declared.limit);
      }
    }
  });

  it('keeps to the plan table’s limits where it states a plan', () => {
    for (const { label, row } of planRows(starter)) {
      const inputs = row.filter(({ style, note }) => style === 'input' && note !== SHARE);
      for (const { validation } of inputs) expect(validation?.limit).toEqual(label.limit);
    }
  });

  it('gives each judged figure a unit in a column of its own, and says where it comes from', () => {
    for (const { declared, row } of judgedRows(starter).filter(({ row: own }) => own.length > 0)) {
      const unit = row.find(({ style }) => style === 'unit');
      expect(unit?.text).toBe(shownUnit(declared.unit ?? ''));
      expect(row.at(-1)?.text, `${row[0]?.text}`).toMatch(/invented|your own/i);
    }
  });

  it('frames every figure that is to be filled in, and no other', () => {
    for (const cell of starter.rows.flat()) {
      if (cell.number !== undefined) expect(cell.style).toBe('input');
      if (cell.formula !== undefined) expect(cell.style).not.toBe('input');
      if (cell.validation) expect(cell.style).toBe('input');
    }
  });

  it('says that the case is invented, carries its cautions, and names no currency', () => {
    const texts = starter.rows.flat().flatMap(({ text }) => (text ? [text] : []));
    expect(texts.some((text) => /invented/.test(text) && /four starter sheets/.test(text))).toBe(true);
    expect(starter.rows.flat().some(({ style }) => style === 'caution')).toBe(true);
    const formats = starter.rows.flat().flatMap(({ format }) => (format ? [format] : []));
    expect([...texts, ...formats].filter((text) => /[€$£¥]|EUR|USD/.test(text))).toEqual([]);
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
