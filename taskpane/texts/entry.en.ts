/** The words for what is typed or pasted and cannot be read, in English. */
export const entry = {
  refused: (where: string, reason: string) => `Not entered in ${where}: ${reason}`,
  flagged: (where: string, typed: string, reason: string) =>
    `${typed} is entered in ${where}, but it will be refused: ${reason}`,
  unclear: (text: string) =>
    `${text} can be read in more than one way. Separate inputs with “;” and write decimals with “,”.`,
  bothSeparators: 'Inputs are separated by both “;” and “,” here. Use one of them.',
  tooHeavy:
    'The grid would stand still over this formula: it is too large, reads too large a range, or has names that explain themselves. LAMBDA is not calculated here.',
  noNumber: (text: string, decimal: string) => `${text} is not a number here, where the decimal mark is “${decimal}”.`,
  perhaps: (number: string) => `Write ${number} if that is meant.`,
  tooFar: (rows: string, columns: string) => `A sheet reaches as far as ${rows} rows and ${columns} columns here.`,
  doesNotFit: (rows: string, columns: string) =>
    `Not pasted: ${rows} × ${columns} cells do not fit below and beside the selected cell.`,
  pastedMark: (decimal: string, shownBy: string) =>
    `What was pasted is read with “${decimal}” as its decimal mark throughout, since it has ${shownBy} in it.`,
  pastedOpen: (text: string, value: string, decimal: string) =>
    `${text} is read as ${value}, since the decimal mark is “${decimal}” here and nothing else in what was pasted shows another.`,
  pastedAsText: (texts: string) => `Pasted as text, since it is not clear which number is meant: ${texts}`,
};
