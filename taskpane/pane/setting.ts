import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import { type Texts, textsFor } from '../texts/texts.js';
import { type Formats, formatsFor } from './formats.js';

/** What every part of the pane needs to know: the words, the numbers and the page around it. */
export interface Setting {
  readonly texts: Texts;
  readonly formats: Formats;
  readonly host: 'excel' | 'embedded';
}

export const settingFor = (locale: string, host: Setting['host']): Setting => ({
  texts: textsFor(locale),
  formats: formatsFor(locale),
  host,
});

export const SettingContext = createContext<Setting>(settingFor('en', 'excel'));

export const useSetting = (): Setting => useContext(SettingContext);
