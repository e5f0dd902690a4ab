import { de } from './de.js';
import { en } from './en.js';

type Filled<T> = {
  readonly [K in keyof T]: T[K] extends string
    ? string
    : T[K] extends (...words: infer W) => string
      ? (...words: W) => string
      : Filled<T[K]>;
};

/** The dictionary: a language that lacks a word does not compile. */
export type Texts = Filled<typeof en>;

const languages: Readonly<Record<string, Texts>> = { en, de };

/** The language spoken for a locale: its own where there is one, otherwise English. */
export function languageOf(locale: string): string {
  const language = locale.toLowerCase().split('-')[0] ?? '';
  return language in languages ? language : 'en';
}

export const textsFor = (locale: string): Texts => languages[languageOf(locale)] ?? en;
