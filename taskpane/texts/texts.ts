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

/** One file for each language, and only the one that is spoken is loaded. */
const languages = {
  en: async (): Promise<Texts> => (await import(/* webpackChunkName: "texts-en" */ './en.js')).en,
  de: async (): Promise<Texts> => (await import(/* webpackChunkName: "texts-de" */ './de.js')).de,
};

/** The language spoken for a locale: its own where there is one, otherwise English. */
export function languageOf(locale: string): keyof typeof languages {
  const language = locale.toLowerCase().split('-')[0] ?? '';
  return language === 'de' ? 'de' : 'en';
}

export const loadTexts = (locale: string): Promise<Texts> => languages[languageOf(locale)]();
