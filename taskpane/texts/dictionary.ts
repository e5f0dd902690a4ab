import type { en } from './en.js';

type Filled<T> = {
  readonly [K in keyof T]: T[K] extends string
    ? string
    : T[K] extends (...words: infer W) => string
      ? (...words: W) => string
      : Filled<T[K]>;
};

/** The dictionary: a language that lacks a word does not compile. */
export type Texts = Filled<typeof en>;
