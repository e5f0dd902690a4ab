import type { Calculation } from '../core/calculation.js';
import type { ChoiceInput, NumberInput } from '../core/input.js';
import { choiceRefusal, numberRefusal } from '../core/read.js';
import type { Unit } from '../core/units.js';
import { anyOf, spanInWords } from '../core/wording.js';
import type { SheetCell, StarterSheet, Validation } from './sheet.js';

/** The columns of a starter sheet: what, figure, unit, what is usual, where it comes from. */
export const COLUMNS = ['Quantity', 'Figure', 'Unit', 'Judgement', 'Where the figure comes from'] as const;
const WIDTHS = [42, 14, 12, 30, 70];
const FIGURE = 'B';

/** One row of a starter sheet before addresses are known. `name` lets formulas of other rows read its figure. */
export interface Line {
  readonly name?: string;
  cells(at: (name: string) => string): readonly SheetCell[];
}

const text = (words: string, style: SheetCell['style']): SheetCell => ({ text: words, style });

export const title = (words: string): Line => ({ cells: () => [text(words, 'title')] });
export const heading = (words: string): Line => ({ cells: () => [text(words, 'heading')] });
export const note = (words: string): Line => ({ cells: () => [text(words, 'note')] });
export const caution = (words: string): Line => ({ cells: () => [text(words, 'caution')] });
export const gap: Line = { cells: () => [] };
export const columnTitles: Line = { cells: () => COLUMNS.map((words) => text(words, 'heading')) };

/** A share shows as a percentage, small numbers with the digits that matter. */
export const formatOf = (unit: Unit, digits = 2): string =>
  unit === 'fraction' ? '0.0%' : digits === 0 ? '#,##0' : `#,##0.${'0'.repeat(digits)}`;

/** A share shows its unit in its format, as a percentage. */
const shownUnit = (unit: Unit): string => (unit === 'fraction' || unit === 'as given' ? '' : unit);

const oneCell = (calculation: Calculation, key: string): NumberInput | ChoiceInput => {
  const input = calculation.inputs[key];
  if (input?.kind !== 'number' && input?.kind !== 'choice')
    throw new Error(`${calculation.id} has no one-cell input ${key}.`);
  return input;
};

function validationOf(input: NumberInput | ChoiceInput): Validation {
  if (input.kind === 'choice')
    return { kind: 'list', of: input.of, message: `${input.label} must be ${anyOf(input.of)}.` };
  return {
    kind: 'number',
    limit: input.limit,
    message: `${input.label} must be ${spanInWords(input.limit, input.unit)}.`,
  };
}

/** An input row: unit, limits, explanation and judgement come from the declaration that it feeds. */
export function input<C extends Calculation>(
  name: string,
  calculation: C,
  key: Extract<keyof C['inputs'], string>,
  figure: number | string,
  options: { readonly label?: string; readonly from?: string; readonly digits?: number } = {},
): Line {
  const declared = oneCell(calculation, key);
  const refusal = declared.kind === 'number' ? numberRefusal(declared, figure) : choiceRefusal(declared, figure);
  if (refusal !== undefined) throw new Error(`Starter figure ${name}: ${refusal}`);
  const validation = validationOf(declared);
  const value: SheetCell =
    typeof figure === 'number'
      ? { number: figure, format: formatOf('unit' in declared ? declared.unit : '', options.digits ?? 0) }
      : { text: figure };
  const from = options.from ?? 'Invented for this example: put your own figure here.';
  return {
    name,
    cells: (at) => [
      text(options.label ?? declared.label, 'label'),
      { ...value, style: 'input', validation, note: declared.help },
      text('unit' in declared ? shownUnit(declared.unit) : '', 'unit'),
      { formula: `=POWDER.RANGECHECK("${calculation.id}","${declared.label}",${at(name)})`, style: 'note' },
      text('source' in declared && declared.usual ? `${from} ${declared.source}` : from, 'note'),
    ],
  };
}

/** A result row: the formula calls the function with the named rows, in the order of its inputs. */
export function result<C extends Calculation>(
  name: string,
  calculation: C,
  reads: Readonly<Partial<Record<Extract<keyof C['inputs'], string>, string | number>>>,
  options: { readonly label?: string; readonly digits?: number; readonly unit?: Unit } = {},
): Line {
  const { output } = calculation;
  if (output.kind !== 'number') throw new Error(`${calculation.id} does not answer with one number.`);
  const given: Readonly<Record<string, string | number | undefined>> = reads;
  const keys = Object.keys(calculation.inputs).filter((key) => key in given);
  return {
    name,
    cells: (at) => [
      text(options.label ?? output.label, 'label'),
      {
        formula: `=POWDER.${calculation.id}(${keys.map((key) => argument(given[key] as string | number, at)).join(',')})`,
        format: formatOf(output.unit, options.digits ?? 1),
        style: 'result',
      },
      text(shownUnit(options.unit ?? output.unit), 'unit'),
      text('', 'note'),
      text(calculation.method, 'note'),
    ],
  };
}

const argument = (read: string | number, at: (name: string) => string): string =>
  typeof read === 'number' ? String(read) : at(read);

/** A row of plain worksheet arithmetic, with its working told in words. */
export function worked(
  name: string,
  label: string,
  formula: (at: (name: string) => string) => string,
  unit: Unit,
  how: string,
  digits = 1,
): Line {
  return {
    name,
    cells: (at) => [
      text(label, 'label'),
      { formula: formula(at), format: formatOf(unit, digits), style: 'result' },
      text(shownUnit(unit), 'unit'),
      text('', 'note'),
      text(how, 'note'),
    ],
  };
}

/** Lays lines out into a sheet: each named line's figure gets an address and a defined name. */
export function layOut(
  sheet: Pick<StarterSheet, 'key' | 'name' | 'summary' | 'headerRows'>,
  lines: readonly Line[],
): StarterSheet {
  const addresses = new Map<string, string>();
  for (const [index, { name }] of lines.entries()) {
    if (name === undefined) continue;
    if (addresses.has(name)) throw new Error(`Two lines of ${sheet.name} are named ${name}.`);
    addresses.set(name, `${FIGURE}${index + 1}`);
  }
  const at = (name: string): string => {
    const address = addresses.get(name);
    if (address === undefined) throw new Error(`No line of ${sheet.name} is named ${name}.`);
    return address;
  };
  return { ...sheet, widths: WIDTHS, rows: lines.map((line) => line.cells(at)), names: Object.fromEntries(addresses) };
}
