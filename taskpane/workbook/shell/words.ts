import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Texts } from '../../texts/texts.js';

/** The words of the page's language, for every part of the shell. */
export const Words = createContext<Texts | undefined>(undefined);

export function useWords(): Texts {
  const words = useContext(Words);
  if (!words) throw new Error('The shell is drawn inside Words.Provider.');
  return words;
}
