/** The words for texts that look like numbers, in English. */
export const textNumbers = {
  looks: 'This looks like a number but is a text: formulas do not count it.',
  turn: 'Turn into numbers',
  turnThere: (place: string) => `Turn into numbers: ${place}`,
  turned: (count: string, place: string) => `Texts turned into numbers: ${count}, in ${place}. Undo takes it back.`,
  shownBy: (text: string) => `The decimal mark was taken from ${text}.`,
  left: (count: string) => `Still texts, since no number can be read in them: ${count}.`,
};
