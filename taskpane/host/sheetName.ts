const MOST_LETTERS = 31;

/** The first name that no sheet has yet, of the length that a sheet's name may have. */
export function freeSheetName(wanted: string, taken: readonly string[]): string {
  const used = new Set(taken.map((one) => one.toLowerCase()));
  for (let number = 1; ; number += 1) {
    const ending = number === 1 ? '' : ` (${number})`;
    const name = wanted.slice(0, MOST_LETTERS - ending.length) + ending;
    if (!used.has(name.toLowerCase())) return name;
  }
}

/** The name of a copy: the sheet's own, shortened where the ending would not fit, and the ending. */
export const copyName = (name: string, ending: string, taken: readonly string[]): string =>
  freeSheetName(`${name.slice(0, MOST_LETTERS - ending.length - 6)} ${ending}`, taken);
