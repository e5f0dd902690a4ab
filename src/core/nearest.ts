import { distance } from 'fastest-levenshtein';

/** Beyond this a text is no slip of the pen any more, and a sheet may hold thousands of long ones. */
const LONGEST = 60;

/** The spelling that fewest letters to change, add or drop lead to (Levenshtein's distance); the first of equals. */
export function nearestOf(spellings: Iterable<string>, word: string): string | undefined {
  const start = word.slice(0, LONGEST);
  let nearest: string | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const spelling of spellings) {
    // Every letter that one has more than the other must be added.
    if (Math.abs(start.length - spelling.length) >= least) continue;
    const away = distance(start, spelling);
    if (away >= least) continue;
    nearest = spelling;
    least = away;
  }
  return nearest;
}
