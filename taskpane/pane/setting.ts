import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Texts } from '../texts/texts.js';
import type { Writing } from '../workbook/entry/writing.js';
import { type Formats, formatsFor } from './formats.js';

/** What every part of the pane needs to know: the words, the numbers and the page around it. */
export interface Setting {
  readonly texts: Texts;
  readonly formats: Formats;
  readonly writing: Writing;
  readonly host: 'excel' | 'embedded';
}

export function settingFor(texts: Texts, locale: string, host: Setting['host']): Setting {
  const formats = formatsFor(locale);
  return { texts, formats, writing: { notation: formats.notation, words: texts.entry }, host };
}

export const SettingContext = createContext<Setting | undefined>(undefined);

export function useSetting(): Setting {
  const setting = useContext(SettingContext);
  if (!setting) throw new Error('A part of the pane stands outside of it.');
  return setting;
}
