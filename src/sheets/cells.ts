import type { Calculation } from '../core/calculation.js';
import type { ChoiceInput, NumberInput, SeriesInput } from '../core/input.js';
import { choiceRefusal, numberRefusal } from '../core/read.js';
import type { Unit } from '../core/units.js';
import { anyOf, spanInWords } from '../core/wording.js';
import { type Declared, isChoice } from './declared.js';
import type { SheetCell, Validation } from './sheet.js';
import { EXAMPLES, quotedText } from './verdict.js';

export const text = (words: string, style: SheetCell['style']): SheetCell => ({ text: words, style });

/** Digits behind the point that a person reads in each unit; 0 where none is given. */
const DIGITS: Partial<Record<Unit, number>> = {
  '': 2,
  'g/hL': 1,
  kg: 1,
  'kg/h': 1,
  'kg/m²': 2,
  h: 1,
  t: 1,
  bar: 2,
  'bar/h': 3,
  EBC: 2,
  'bar/hL': 6,
  mPa·s: 2,
  'money/kg': 2,
  'money/t': 2,
  'money/hL': 4,
  'money/m³': 2,
  'money/kWh': 2,
  'money/h': 2,
};

const SCIENTIFIC: readonly Unit[] = ['m/kg', '1/m'];

/** Further digits that a standard error needs beside its figure. */
const FINER = 2;

export const finerFormatOf = (unit: Unit): string => formatOf(unit, (DIGITS[unit] ?? 0) + FINER);

/** A share shows as a percentage, a resistance with its power of ten, all else with the digits that matter. */
export function formatOf(unit: Unit, digits = DIGITS[unit] ?? 0): string {
  if (unit === 'fraction') return '0.0%';
  if (unit === 'darcy') return '0.00####';
  if (SCIENTIFIC.includes(unit)) return '0.00E+00';
  return digits === 0 ? '#,##0' : `#,##0.${'0'.repeat(digits)}`;
}

/** A share shows its unit in its format, as a percentage. */
export const shownUnit = (unit: Unit): string => (unit === 'fraction' || unit === 'as given' ? '' : unit);

/** The declared input that a cell feeds. */
export function declaredInput(calculation: Calculation, key: string): ChoiceInput | NumberInput | SeriesInput {
  const input = calculation.inputs[key];
  if (input?.kind !== 'number' && input?.kind !== 'choice' && input?.kind !== 'series')
    throw new Error(`${calculation.id} has no input ${key} that a cell holds.`);
  return input;
}

export const unitOf = (declared: Declared): Unit => (isChoice(declared) ? '' : declared.unit);

export function validationOf(declared: Declared): Validation {
  if (isChoice(declared))
    return { kind: 'list', of: declared.of, message: `${declared.label} must be ${anyOf(declared.of)}.` };
  const { label, limit, unit } = declared;
  return { kind: 'number', limit, message: `${label} must be ${spanInWords(limit, unit)}.` };
}

/** A cell to fill in: limits and explanation come from the declaration. Without a figure it waits for one. */
export function inputCell(declared: Declared, figure?: number | string, digits?: number): SheetCell {
  const rest = { style: 'input', validation: validationOf(declared), note: declared.help } as const;
  const format = isChoice(declared) ? undefined : formatOf(declared.unit, digits);
  if (figure === undefined) return format ? { format, ...rest } : rest;
  const refusal = isChoice(declared) ? choiceRefusal(declared, figure) : numberRefusal(declared, figure);
  if (refusal !== undefined) throw new Error(`A starter figure is refused: ${refusal}`);
  if (typeof figure === 'string') return { text: figure, ...rest };
  return format ? { number: figure, format, ...rest } : { number: figure, ...rest };
}

export const resultCell = (formula: string, unit: Unit, digits?: number): SheetCell => ({
  formula,
  format: formatOf(unit, digits),
  style: 'result',
});

/** A place that an answer spills into. */
export const spilled = (unit: Unit, digits?: number): SheetCell => ({
  format: formatOf(unit, digits),
  style: 'result',
});

/** Where a figure comes from, and who says what is usual. */
export const sourceOf = (declared: Declared, from = ''): string =>
  [from, !isChoice(declared) && declared.usual ? declared.source : ''].filter((one) => one !== '').join(' ');

/** What is said of a figure; that it is invented only as long as it is the example’s. */
export const aboutCell = (judgements: readonly string[], words: string): SheetCell => ({
  formula: `=IF(${judgements.map((one) => `COUNTIF(${one},"*${EXAMPLES}")`).join('+')}>0,"Invented for this example: put your own figure here. ","")&${quotedText(words)}`,
  style: 'note',
});

/** Whether nobody has to state a figure: a blank is what its declaration presets, which is 0, or nothing. */
export const mayBeBlank = (declared: object): boolean =>
  ('preset' in declared && declared.preset === 0) || 'optional' in declared;

/** A figure that feeds no function but the sheet’s own arithmetic, with limits of its own. */
export const ownInput = (
  label: string,
  number: number,
  limit: readonly [number, number],
  unit: Unit,
  help: string,
): SheetCell => inputCell({ label, help, limit, unit, source: help }, number, 0);
