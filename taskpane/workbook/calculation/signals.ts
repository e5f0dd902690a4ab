/**
 * Where a calculation is: the sheet’s id, and the row and column of the formula; both are below zero for the formulas of
 * the sheet’s rules. Before and between formulas it is nowhere.
 */
export type Place = readonly [sheet: string, row: number, column: number];

/** What is left alone, and whether every other formula is told of. */
export interface Rests {
  readonly rests: readonly Place[];
  readonly exactly: boolean;
}

/**
 * What page and thread tell each other besides the engine’s own messages: as few words as can be, since one comes
 * with each formula.
 */
export type FromThread =
  /** `about` where formulas after that one are not told of. */
  | { readonly at: Place | null; readonly about?: boolean }
  | { readonly pong: true }
  | { readonly broken: true }
  /** The formula there asks for more cells than are gone through. */
  | { readonly tooLarge: Place };
/** The rows that a filter hides, by the sheets’ ids. */
export type FilteredOut = Readonly<Record<string, readonly number[]>>;

export type ToThread = { readonly ping: true } | Rests | { readonly filteredOut: FilteredOut };

const has = (message: unknown, ...keys: readonly string[]) =>
  typeof message === 'object' && message !== null && keys.some((key) => key in message);

export const isFromThread = (message: unknown): message is FromThread =>
  has(message, 'at', 'pong', 'broken', 'tooLarge');
export const isToThread = (message: unknown): message is ToThread => has(message, 'ping', 'rests', 'filteredOut');
