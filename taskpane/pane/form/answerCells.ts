import type { Field, Output } from '../../../src/core/output.js';
import type { Unit } from '../../../src/core/units.js';
import type { BlockCell } from '../../host/host.js';

type Format = Pick<BlockCell, 'format'>;
/** An answer as rows of cells. */
type Answer = readonly (readonly unknown[])[];

/** A share is shown as a percentage; every other number as the sheet likes. */
export const formatOf = (unit: Unit): Format => (unit === 'fraction' ? { format: '0.0 %' } : {});

/** Digits of an answer that a person reads; what stands behind them would only run over the next cell. */
const DIGITS = 5;
/** Places before the point; outside of these a number is written by powers of ten. */
const [FEWEST, MOST] = [-3, 9];

/** As many places as numbers of this size need. A count, or a number of whatever unit was asked for, stays as it is. */
function formatFor(unit: Unit, values: readonly unknown[]): Format {
  const numbers = values.filter((one) => typeof one === 'number');
  const largest = Math.max(0, ...numbers.map(Math.abs));
  if (unit === 'fraction' || unit === 'as given' || largest === 0) return formatOf(unit);
  if (unit === '' && numbers.every(Number.isInteger)) return {};
  const before = Math.floor(Math.log10(largest)) + 1;
  if (before < FEWEST || before > MOST) return { format: `0.${'0'.repeat(DIGITS - 1)}E+00` };
  return { format: before >= DIGITS ? '#,##0' : `#,##0.${'0'.repeat(DIGITS - Math.max(1, before))}` };
}

const fieldFormat = (field: Field, values: readonly unknown[]): Format =>
  'text' in field ? {} : formatFor(field.unit, values);

/** What an answer will write into a place, as far as the column must be wide enough for it. */
const roomFor = (word: unknown): Pick<BlockCell, 'room'> => (typeof word === 'string' ? { room: word.length } : {});

/**
 * The looks of the cells that an answer fills, so that a block can have them ready before it spills.
 * @param answer what the inputs of the block answer at the moment.
 */
export function answerCells(output: Output, answer: Answer): readonly (readonly BlockCell[])[] {
  const result = { style: 'result' } as const;
  const column = (index: number) => answer.map((row) => row[index]);
  if (output.kind === 'number') return [[{ ...result, ...formatFor(output.unit, column(0)) }]];
  if (output.kind === 'text') return [[result]];
  if (output.kind === 'column') return Array.from({ length: Math.max(1, answer.length) }, () => [result]);
  const fields = Object.values(output.fields);
  const row = fields.map((field, index) => ({ ...result, ...fieldFormat(field, column(index)) }));
  if (output.kind === 'row') return [row];
  if (output.kind === 'table') {
    const header = fields.map((_, index) => ({ style: 'heading', ...roomFor(answer[0]?.[index]) }) as const);
    return [header, ...Array.from({ length: Math.max(0, answer.length - 1) }, () => row)];
  }
  const errors = fields.map((field) => ('error' in field && field.error ? [field, field] : [field]));
  return errors.flat().map((field, index) => {
    const [label, value] = answer[index] ?? [];
    return [
      { style: 'label', ...roomFor(label) },
      { ...result, ...fieldFormat(field, [value]) },
    ] as const;
  });
}
