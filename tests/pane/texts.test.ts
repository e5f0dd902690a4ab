import { describe, expect, it } from 'vitest';
import { de } from '../../taskpane/texts/de.js';
import { en } from '../../taskpane/texts/en.js';
import { languageOf, loadTexts } from '../../taskpane/texts/texts.js';

/** Every text with its path; texts made from words are made from numbered ones. */
function flat(texts: object, path = ''): [string, string][] {
  return Object.entries(texts).flatMap(([key, value]): [string, string][] => {
    if (typeof value === 'function') return [[`${path}${key}`, value('«1»', '«2»')]];
    return typeof value === 'string' ? [[`${path}${key}`, value]] : flat(value, `${path}${key}.`);
  });
}

describe('the texts of the pane', () => {
  it('are filled in both languages, under the same names', () => {
    expect(flat(de).map(([name]) => name)).toEqual(flat(en).map(([name]) => name));
    expect([...flat(en), ...flat(de)].filter(([, text]) => text.trim() === '')).toEqual([]);
  });

  it('use the same words handed to them in both languages', () => {
    const handed = (text: string) => [...new Set(text.match(/«\d»/g))].sort();
    const english = new Map(flat(en));
    expect(flat(de).filter(([name, text]) => `${handed(text)}` !== `${handed(english.get(name) ?? '')}`)).toEqual([]);
  });

  it('follow the language of a locale, and are English for any other', async () => {
    expect(await loadTexts('de-AT')).toBe(de);
    expect(await loadTexts('en-US')).toBe(en);
    expect(await loadTexts('cs-CZ')).toBe(en);
    expect(languageOf('cs-CZ')).toBe('en');
  });
});
