/** The public face for programmers: every calculation, and how to evaluate one. */

export { catalogue, families } from './catalogue.js';
export { CAUTIONS } from './cautions.js';
export type { Calculation, CautionName, Family } from './core/calculation.js';
export { type Answer, evaluate, evaluateCells } from './core/evaluate.js';
export type { Cell, Given, Input, Inputs } from './core/input.js';
export type { NoAnswer, Output, Refused } from './core/output.js';
export { fromSI, toSI, UNITS, type Unit } from './core/units.js';
