import type { Calculation } from '../core/calculation.js';
import type { Unit } from '../core/units.js';
import {
  aboutCell,
  declaredInput,
  inputCell,
  mayBeBlank,
  resultCell,
  shownUnit,
  sourceOf,
  text,
  unitOf,
} from './cells.js';
import type { Columns } from './columns.js';
import type { Declared } from './declared.js';
import type { At, Line, Mark } from './layout.js';
import { placeOf } from './place.js';
import { sourceCell } from './provenance.js';
import { callOf, type Figure } from './reads.js';
import type { SheetCell } from './sheet.js';
import { type Step, verdictOf } from './verdict.js';

/** Names of a row's figures, column by column; an empty one leaves its column empty. */
export type Names = string | readonly string[];
type Key<C extends Calculation> = Extract<keyof C['inputs'], string>;
type Reads<C extends Calculation> = Readonly<Partial<Record<Key<C>, Figure>>>;

interface Said {
  readonly label?: string;
  readonly digits?: number;
}

interface InputSaid extends Said {
  readonly from?: string;
  /** Where the declaration’s own explanation would mislead on this sheet. */
  readonly help?: string;
  readonly format?: string;
  readonly mayBeBlank?: true;
  /** Further reasons to refuse each figure, or to find it odd. */
  further?(at: At, name: string): readonly Step[];
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
    about: SheetCell,
    source: SheetCell = text('', 'note'),
  ) => [
    text(label, 'label'),
    ...filled(figures),
    text(shownUnit(unit), 'unit'),
    ...columns.figures.map((_, index) => judged[index] ?? text('', 'note')),
    source,
    about,
  ];

  /** Figures to fill in, each judged beside it by what it is declared as. */
  function asked(
    names: readonly string[],
    label: string,
    declared: readonly Declared[],
    cells: readonly (SheetCell | undefined)[],
    options: InputSaid = {},
  ): Line {
    const shown = names.flatMap((name, index) => (name ? [index] : []));
    const [first = 0] = shown;
    return {
      marks: marksOf(names),
      judged: shown.map((index) => ({
        cells: { column: index + 1 },
        by: { column: columns.judgement + index },
      })),
      cells: (at) => {
        const place = at(names[first] as string);
        const placed = (column: number) => placeOf(Number(/\d+/.exec(place)?.[0]) - 1, { column });
        const judged = names.map((name, index): SheetCell | undefined => {
          if (!name) return undefined;
          const own = declared[index] ?? (declared[0] as Declared);
          const figure = cells[index]?.number ?? cells[index]?.text;
          const example = figure === undefined ? undefined : { figure, source: placed(columns.source) };
          const formula = verdictOf(
            at(name),
            { declared: own, label, mayBeBlank: options.mayBeBlank ?? mayBeBlank(own) },
            example,
            options.further?.(at, name) ?? [],
          );
          return { formula, style: 'note' };
        });
        const judgements = shown.map((index) => placed(columns.judgement + index));
        const about = aboutCell(judgements, sourceOf(declared[0] as Declared, options.from));
        return row(label, cells, unitOf(declared[0] as Declared), judged, about, sourceCell);
      },
    };
  }

  /** An input row: unit, limits, explanation and judgement come from the declaration that it feeds. */
  function input<C extends Calculation>(
    names: Names,
    calculation: C,
    keys: Key<C> | readonly Key<C>[],
    figures: Figure | undefined | readonly Figure[],
    options: InputSaid = {},
  ): Line {
    const each = listed(keys).map((key) => declaredInput(calculation, key));
    const named = listed(names);
    const given = listed(figures);
    const first = named.findIndex((name) => name !== '');
    const declared = named.map((_, index) => each[index] ?? (each[0] as Declared));
    const cells = named.map((name, index) => {
      if (!name) return undefined;
      const cell = inputCell(declared[index] as Declared, given[index - first] as Figure, options.digits);
      const { help, format } = options;
      return { ...cell, ...(help ? { note: help } : {}), ...(format ? { format } : {}) };
    });
    return asked(named, options.label ?? (declared[0] as Declared).label, declared, cells, options);
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
        return row(label, cells, unit, [], text(how, 'note'));
      },
    };
  }

  /** Figures that a person decides from: each shows only while all that it rests on is sound. */
  const answered: typeof computed = (names, ...rest) => ({
    ...computed(names, ...rest),
    answers: listed(names).flatMap((name, index) =>
      name ? [{ column: index + 1, by: columns.judgement + index }] : [],
    ),
  });

  return { asked, input, result, computed, answered, row };
}
