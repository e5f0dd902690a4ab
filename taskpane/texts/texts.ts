import type { Texts } from './dictionary.js';

export type { Texts };

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
