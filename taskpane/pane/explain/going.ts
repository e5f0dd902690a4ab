import { createContext } from 'preact';
import type { Reference } from '../../host/reference.js';

/** Where the parts of an explanation can lead. */
export const Going = createContext<{
  readonly goTo: (reference: Reference) => void;
  /** The sheet of the explained formula. */
  readonly sheet: string;
}>({ goTo: () => {}, sheet: '' });
