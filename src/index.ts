/**
 * The public face for programmers: every calculation by name, the list of all, and how to evaluate one. Nothing here
 * acts on import, and a refusal or a missing answer is a value, no exception.
 */

export * from './calculations.js';
export { catalogue, families } from './catalogue.js';
export { CAUTIONS } from './cautions.js';
export { calculate } from './core/calculate.js';
export type { Calculation, CautionName, Family } from './core/calculation.js';
export { type Answer, evaluate, evaluateCells, type Handed, isNoAnswer } from './core/evaluate.js';
export type { Bounds, Cell, Given, Input, Inputs, PlanCells, PlanLabel, PlanTable, Values } from './core/input.js';
export type { Estimate, Field, Fields, NoAnswer, Output, Refused, Result, Row } from './core/output.js';
export type { AnswerCell } from './core/present.js';
export { isRefused } from './core/read.js';
export { fromSI, toSI, UNITS, type Unit, type UnitDefinition } from './core/units.js';
export { PLAN } from './plan/table.js';
