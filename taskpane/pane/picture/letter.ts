/** Width of a letter, as a share of the size of the text: a cautious guess, since no text is measured. */
export const LETTER = 0.6;
