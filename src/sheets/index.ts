import { dosing } from './dosing.js';
import { SHEET_KEYS, type SheetKey } from './keys.js';
import { quotes } from './quotes.js';
import type { StarterSheet } from './sheet.js';
import { trial } from './trial.js';
import { year } from './year.js';

const BY_KEY: Readonly<Record<SheetKey, StarterSheet>> = { dosing, trial, quotes, year };

/** Every starter sheet, in the order in which they are offered. */
export const starterSheets: readonly StarterSheet[] = SHEET_KEYS.map((key) => BY_KEY[key]);
