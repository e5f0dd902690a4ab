import type { Texts } from '../../texts/texts.js';
import type { Notation } from './notation.js';

/** How the user writes, and the words for what cannot be read. */
export interface Writing {
  readonly notation: Notation;
  readonly words: Texts['entry'];
}
