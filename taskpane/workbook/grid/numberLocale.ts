import type { INumfmtLocaleTag } from '../engine/core.js';

/** Languages with a decimal comma for which the engine knows how to write a formatted number. */
const KNOWN: readonly INumfmtLocaleTag[] = [
  'cs',
  'da',
  'nl',
  'fi',
  'fr',
  'de',
  'el',
  'hu',
  'is',
  'id',
  'it',
  'nb',
  'pl',
  'pt',
  'ru',
  'sk',
  'es',
  'sv',
  'tr',
  'vi',
];
/** Decimal comma and groups apart by a space: read alike wherever the comma is the decimal mark. */
const ELSEWHERE: INumfmtLocaleTag = 'fi';

export const numberLocale = (language: string): INumfmtLocaleTag => {
  const [base = ''] = language.toLowerCase().split('-');
  return KNOWN.find((tag) => tag === base) ?? ELSEWHERE;
};
