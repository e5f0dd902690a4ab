import type { Texts } from '../../texts/dictionary.js';
import type { ParseXml } from './readXml.js';

export type OpenWords = Texts['open'];
/** Something that a workbook file can hold and the embedded workbook cannot. */
export type LeftOut = keyof OpenWords['parts'];

/** What the reading of one file has at hand, and what it notes on the way. */
export interface Reading {
  readonly words: OpenWords;
  readonly parse: ParseXml;
  readonly leftOut: Set<LeftOut>;
  /** What has been taken so far, held against the limits. */
  readonly taken: { cells: number; characters: number; ruled: number };
}
