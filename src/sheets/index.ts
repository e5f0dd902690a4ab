import { dosing } from './dosing.js';
import { quotes } from './quotes.js';
import type { StarterSheet } from './sheet.js';
import { trial } from './trial.js';
import { year } from './year.js';

/** Every starter sheet, in the order in which they are offered. */
export const starterSheets: readonly StarterSheet[] = [dosing, trial, quotes, year];
