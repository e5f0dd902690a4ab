import type { Texts } from '../../texts/dictionary.js';
import type { ParseXml } from './readXml.js';

export type OpenWords = Texts['open'];
/** Something that a workbook file can hold and the embedded workbook cannot. */
export type LeftOut = keyof OpenWords['parts'];

export type Knows = (name: string) => boolean;

/** What the reading of one file has at hand, and what it notes on the way. */
export interface Reading {
  readonly words: OpenWords;
  readonly parse: ParseXml;
  readonly leftOut: Set<LeftOut>;
  /** Whether the grid calculates a native function, by its name in capital letters. */
  readonly knows: Knows;
  /** The names that the grid uses, by the same in small letters. */
  readonly names: Map<string, string>;
  /** The places of those that stand for cells, by the name in small letters. */
  readonly ranges: Map<string, string>;
  /** The parts of charts that were taken, in small letters. */
  readonly drawn: Set<string>;
  /** What has been taken so far, held against the limits. */
  readonly taken: { cells: number; characters: number; ruled: number; judged: number };
}
