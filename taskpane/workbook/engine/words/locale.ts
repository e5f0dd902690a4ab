import { languageOf } from '../../../texts/texts.js';
import type { ILanguagePack, LocaleType } from '../core.js';

/** The words of the engine's own parts: its argument hints, its list of names and its messages. */
export interface Locale {
  readonly locale: LocaleType;
  readonly words: ILanguagePack;
}

/** One file for each language, and only the one that is spoken is loaded. */
const locales: Record<ReturnType<typeof languageOf>, () => Promise<Locale>> = {
  en: () => import(/* webpackChunkName: "grid-en" */ './english.js'),
  de: () => import(/* webpackChunkName: "grid-de" */ './german.js'),
};

export const loadLocale = (language: string): Promise<Locale> => locales[languageOf(language)]();

/** The words of the parts that load later. */
const tools: Record<ReturnType<typeof languageOf>, () => Promise<{ toolWords: Record<string, ILanguagePack> }>> = {
  en: () => import(/* webpackChunkName: "tools-en" */ './toolsEnglish.js'),
  de: () => import(/* webpackChunkName: "tools-de" */ './toolsGerman.js'),
};

export const loadToolWords = async (language: string) => (await tools[languageOf(language)]()).toolWords;
