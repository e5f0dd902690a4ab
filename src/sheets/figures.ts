import type { Calculation } from '../core/calculation.js';
import type { Unit } from '../core/units.js';
import { declaredInput, inputCell, resultCell, shownUnit, sourceOf, text, unitOf } from './cells.js';
import type { Columns } from './columns.js';
import { call } from './formula.js';
import type { At, Line, Mark } from './layout.js';
import { callOf, type Figure, spanOf } from './reads.js';
import type { SheetCell } from './sheet.js';

/** Names of a row's figures, column by column; an empty one leaves its column empty. */
export type Names = string | readonly string[];
type Key<C extends Calculation> = Extract<keyof C['inputs'], string>;
type Reads<C extends Calculation> = Readonly<Partial<Record<Key<C>, Figure>>>;

interface Said {
  readonly label?: string;
  readonly digits?: number;
}

const listed = <T>(one: T | readonly T[]): readonly T[] => (Array.isArray(one) ? one : [one as T]);

const marksOf = (names: readonly string[]): Readonly<Record<string, Mark>> =>
  Object.fromEntries(names.flatMap((name, index) => (name ? [[name, { column: index + 1 }]] : [])));

const EMPTY: SheetCell = { text: '' };

/** Rows of single figures in a sheet with these columns. */
export function figureLines(columns: Columns) {
  const filled = (cells: readonly (SheetCell | undefined)[]) =>
    columns.figures.map((_, index) => cells[index] ?? EMPTY);

  const row = (
    label: string,
    figures: readonly (SheetCell | undefined)[],
    unit: Unit,
    judged: readonly (SheetCell | undefined)[],
    source: string,
  ) => [
    text(label, 'label'),
    ...filled(figures),
    text(shownUnit(unit), 'unit'),
    ...columns.figures.map((_, index) => judged[index] ?? text('', 'note')),
    text(source, 'note'),
  ];

  /** An input row: unit, limits, explanation and judgement come from the declaration that it feeds. */
  function input<C extends Calculation>(
    names: Names,
    calculation: C,
    keys: Key<C> | readonly Key<C>[],
    figures: Figure | readonly Figure[],
    options: Said & { readonly from?: string } = {},
  ): Line {
    const each = listed(keys).map((key) => declaredInput(calculation, key));
    const declared = each[0] as (typeof each)[number];
    const named = listed(names);
    const given = listed(figures);
    const first = named.findIndex((name) => name !== '');
    const cells = named.map((name, index) =>
      name ? inputCell(each[index] ?? declared, given[index - first] as Figure, options.digits) : undefined,
    );
    return {
      marks: marksOf(named),
      judged: [
        { cells: { column: first + 1, columns: named.length - first }, by: { column: columns.judgement + first } },
      ],
      cells: (at) => {
        const places = named.filter((name) => name !== '').map(at);
        const judged = `=${call('RANGECHECK', [`"${calculation.id}"`, `"${declared.label}"`, spanOf(places)])}`;
        return row(
          options.label ?? declared.label,
          cells,
          unitOf(declared),
          named.map((_, index) => (index === first ? { formula: judged, style: 'note' } : undefined)),
          sourceOf(declared, options.from),
        );
      },
    };
  }

  /** A result row: each formula calls the function with the named places, in the order of its inputs. */
  function result<C extends Calculation>(
    names: Names,
    calculation: C,
    reads: Reads<C> | readonly Reads<C>[],
    options: Said & { readonly unit?: Unit } = {},
  ): Line {
    const { output } = calculation;
    if (output.kind !== 'number') throw new Error(`${calculation.id} does not answer with one number.`);
    const given = listed(reads) as readonly Readonly<Record<string, Figure>>[];
    const unit = options.unit ?? output.unit;
    const formulas = (at: At) => given.map((one) => `=${callOf(calculation, one, at)}`);
    return computed(names, options.label ?? output.label, formulas, unit, calculation.method, options.digits);
  }

  /** A row of worksheet arithmetic, with its working told in words. */
  function computed(
    names: Names,
    label: string,
    formulas: (at: At) => string | readonly string[],
    unit: Unit,
    how: string,
    digits?: number,
  ): Line {
    const named = listed(names);
    return {
      marks: marksOf(named),
      cells: (at) => {
        const given = [...listed(formulas(at))];
        const cells = named.map((name) => (name ? resultCell(given.shift() as string, unit, digits) : undefined));
        return row(label, cells, unit, [], how);
      },
    };
  }

  return { input, result, computed, row };
}
