import { accurateFunctions } from './accurate.js';
import { Average } from './average.js';
import { Char, Code } from './characters.js';
import { Compare } from './compare.js';
import { Convert } from './convert.js';
import { DeclineBalance } from './decline.js';
import { Edate } from './edate.js';
import type { FunctionClass } from './engineClass.js';
import { Eomonth } from './eomonth.js';
import { extreme } from './extremes.js';
import { Xlookup } from './found.js';
import { IsoWeek } from './isoWeek.js';
import { nearest } from './search.js';
import { Second } from './second.js';
import { Single } from './single.js';
import { SumProduct } from './sumProduct.js';
import { WorkdayInternational } from './weekday.js';
import { Search } from './wildcards.js';

/** Functions of the file format that the engine has not. */
const addedFunctions: [FunctionClass, string][] = [[Single, 'SINGLE']];
export const ADDED: ReadonlySet<string> = new Set(addedFunctions.map(([, name]) => name));

/**
 * Functions of the engine that answer wrongly without a word, in their corrected form. Each file says what was asked, what
 * the standard has and what the engine gave; a test shows that the bare engine still does, so that one is deleted when not.
 */
export const correctedFunctions = (): [FunctionClass, string][] => [
  [Compare, 'COMPARE'],
  [Edate, 'EDATE'],
  [Eomonth, 'EOMONTH'],
  [IsoWeek, 'ISOWEEKNUM'],
  [WorkdayInternational, 'WORKDAY.INTL'],
  [SumProduct, 'SUMPRODUCT'],
  [Convert, 'CONVERT'],
  [nearest('MATCH'), 'MATCH'],
  [nearest('XMATCH'), 'XMATCH'],
  [Xlookup, 'XLOOKUP'],
  [extreme('MAXIFS'), 'MAXIFS'],
  [extreme('MINIFS'), 'MINIFS'],
  [Average, 'AVERAGE'],
  [Char, 'CHAR'],
  [Code, 'CODE'],
  [Search, 'SEARCH'],
  [Second, 'SECOND'],
  [DeclineBalance, 'DB'],
  ...accurateFunctions(),
  ...addedFunctions,
];
