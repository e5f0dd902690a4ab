import type { Calculation } from '../core/calculation.js';
import { hazeGrade } from './hazeGrade.js';
import { polyphenols } from './polyphenols.js';
import { toUnit } from './toUnit.js';

/** The laboratory's part of the family that it shares with safety. */
export const laboratoryCalculations: readonly Calculation[] = [toUnit, hazeGrade, polyphenols];
