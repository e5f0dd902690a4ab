import type { Unit } from './units.js';

/** What a cell can hold once the host's wrappings are taken off; blank, however the host writes it, is null. */
export type Cell = number | string | boolean | null;

interface Said {
  readonly label: string;
  readonly help: string;
}

/** What a number may be: its unit, what is refused, what is usual, and where both come from. */
export interface Bounds {
  readonly unit: Unit;
  /** Least and most, both allowed, in `unit`. What lies outside is refused. */
  readonly limit: readonly [number, number];
  /** The trade's habit, in `unit`. What lies outside is remarked upon, never refused. */
  readonly usual?: readonly [number, number];
  /** Where limits and usual range come from. */
  readonly source: string;
}

export interface NumberInput extends Said, Bounds {
  readonly kind: 'number';
  readonly preset?: number;
  readonly optional?: true;
}

export interface ChoiceInput extends Said {
  readonly kind: 'choice';
  readonly of: readonly string[];
  /** Words that users try and that have no place here, each with the reason. */
  readonly unfit?: Readonly<Record<string, string>>;
  readonly preset?: string;
}

export interface TextInput extends Said {
  readonly kind: 'text';
}

/** Whatever the cell holds, taken as it is: for calculations that judge a value instead of using it. */
export interface CellInput extends Said {
  readonly kind: 'cell';
}

/** A whole range of numbers as one input. All series of a calculation pair up by position. */
export interface SeriesInput extends Said, Bounds {
  readonly kind: 'series';
  readonly least: number;
  /** One cell may stand for every position. */
  readonly oneForAll?: true;
  readonly optional?: true;
}

/** A whole range of texts as one input; a blank place is an empty text. */
export interface NamesInput extends Said {
  readonly kind: 'names';
  readonly optional?: true;
}

/** One label of a plan: what its value may be, and what it means. */
export interface PlanLabel extends Said, Bounds {
  readonly group: string;
  readonly preset?: number;
  /** May be missing without a preset; `compute` then finds undefined. */
  readonly optional?: true;
  /** Within its limits, 0 is still seldom what somebody means: hosts may hand a blank over as 0, so it is asked about. */
  readonly askedAtZero?: true;
}

/** The labels that a plan may hold, by key. */
export type PlanTable = Readonly<Record<string, PlanLabel>>;

/** One column of a plan by key, in SI. */
export type PlanValues = Readonly<Record<string, number | undefined>>;

/** A plan as the worksheet hands it over. */
export interface PlanCells {
  readonly labels: readonly Cell[];
  readonly columns: Readonly<Record<string, readonly Cell[]>>;
}

/** Labels that do not go together, and the sentence that says why. */
export interface PlanRefusal {
  readonly keys: readonly string[];
  readonly sentence: string;
}

/** A column of labels and one or more columns of values beside it. */
export interface PlanInput extends Said {
  readonly kind: 'plan';
  readonly table: PlanTable;
  readonly groups: readonly string[];
  readonly columns: Readonly<Record<string, Said>>;
  /** Rules between the labels of one column, in SI. */
  readonly refuse?: (values: PlanValues) => PlanRefusal | undefined;
  /** Handed on as cells, for calculations that judge a plan instead of using it. */
  readonly judged?: true;
}

/** One input of a calculation, told apart by `kind`. */
export type Input = NumberInput | ChoiceInput | TextInput | CellInput | SeriesInput | NamesInput | PlanInput;
/** The inputs of a calculation by key, in the order of the worksheet function's parameters. */
export type Inputs = Readonly<Record<string, Input>>;

/** Inputs that take one cell, and spread over a range where the answer allows it. */
export type OneCellInput = NumberInput | ChoiceInput | TextInput | CellInput;

type PlanValue<L> = L extends { optional: true } ? number | undefined : number;

export type Plan<T, G> = {
  readonly [K in keyof T as T[K] extends { group: infer H } ? (H extends G ? K : never) : never]: PlanValue<T[K]>;
};

/** What `compute` reads of one input, in SI. */
export type Value<X> = X extends { kind: 'number'; optional: true }
  ? number | undefined
  : X extends { kind: 'number' }
    ? number
    : X extends { kind: 'choice'; of: readonly (infer T)[] }
      ? T
      : X extends { kind: 'text' }
        ? string
        : X extends { kind: 'cell' }
          ? Cell
          : X extends { kind: 'series'; optional: true }
            ? Float64Array | undefined
            : X extends { kind: 'series' }
              ? Float64Array
              : X extends { kind: 'names' }
                ? X extends { optional: true }
                  ? readonly string[] | undefined
                  : readonly string[]
                : X extends { kind: 'plan'; judged: true }
                  ? PlanCells
                  : X extends { kind: 'plan'; table: infer T; groups: readonly (infer G)[]; columns: infer C }
                    ? { readonly [K in keyof C]: Plan<T, G> }
                    : never;

/** What `compute` reads, by key, in SI. */
export type Values<I> = { readonly [K in keyof I]: Value<I[K]> };

type Optional<I> = {
  [K in keyof I]: I[K] extends { optional: true } | { preset: number | string } ? K : never;
}[keyof I];

type LabelsOf<T> = { [K in keyof T]: T[K] extends { label: infer L extends string } ? L : never }[keyof T];

/** One column of a plan by label; an editor proposes the labels, and a label with its unit behind it serves as well. */
type GivenColumn<T> = Readonly<Record<string, number>> & { readonly [L in LabelsOf<T>]?: number };

/** What a person gives for one input: numbers in the input's own unit. */
export type GivenValue<X> = X extends { kind: 'number' }
  ? number
  : X extends { kind: 'series' }
    ? readonly number[]
    : X extends { kind: 'plan'; table: infer T; columns: infer C }
      ? { readonly [K in keyof C]: GivenColumn<T> }
      : Value<X>;

/** What a person gives, by key, each number in its input's own unit; what has a preset may be left out. */
export type Given<I> = { readonly [K in Exclude<keyof I, Optional<I>>]: GivenValue<I[K]> } & {
  readonly [K in Optional<I>]?: GivenValue<I[K]>;
};
