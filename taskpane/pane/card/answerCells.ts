import type { Field, Output } from '../../../src/core/output.js';
import type { Unit } from '../../../src/core/units.js';
import type { BlockCell } from '../../host/host.js';

/** A share is shown as a percentage; every other number as the sheet likes. */
export const formatOf = (unit: Unit): Pick<BlockCell, 'format'> => (unit === 'fraction' ? { format: '0.0 %' } : {});

const fieldFormat = (field: Field): Pick<BlockCell, 'format'> => ('text' in field ? {} : formatOf(field.unit));

/** The looks of the cells that an answer fills, so that a block can have them ready before it spills. */
export function answerCells(output: Output, rows: number): readonly (readonly BlockCell[])[] {
  const result = { style: 'result' } as const;
  if (output.kind === 'number') return [[{ ...result, ...formatOf(output.unit) }]];
  if (output.kind === 'text') return [[result]];
  if (output.kind === 'column') return Array.from({ length: Math.max(1, rows) }, () => [result]);
  const fields = Object.values(output.fields);
  const row = fields.map((field) => ({ ...result, ...fieldFormat(field) }));
  if (output.kind === 'row') return [row];
  if (output.kind === 'table') {
    const header = fields.map(() => ({ style: 'heading' }) as const);
    return [header, ...Array.from({ length: Math.max(0, rows - 1) }, () => row)];
  }
  return fields.flatMap((field) => {
    const line = [{ style: 'label' }, { ...result, ...fieldFormat(field) }] as const;
    return 'error' in field && field.error ? [line, line] : [line];
  });
}
