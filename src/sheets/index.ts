import { dosing } from './dosing.js';
import type { StarterSheet } from './sheet.js';

/** Every starter sheet, in the order in which they are offered. */
export const starterSheets: readonly StarterSheet[] = [dosing];
