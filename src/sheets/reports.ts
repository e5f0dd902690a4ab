import { fitRun } from '../cake/fitRun.js';
import type { Calculation } from '../core/calculation.js';
import type { Fields, Output } from '../core/output.js';
import type { Unit } from '../core/units.js';
import { errorFields } from '../errors/errorFields.js';
import { finerFormatOf, formatOf, shownUnit, text } from './cells.js';
import type { Columns } from './columns.js';
import { columnOf, inEachRow } from './formula.js';
import type { At, Line, Mark } from './layout.js';

interface ReportRow {
  readonly key: string;
  readonly label: string;
  readonly unit: Unit;
  readonly format: string;
}

const fieldsOf = ({ id, output }: Calculation, kind: Output['kind']): Fields => {
  if (output.kind !== kind || !('fields' in output)) throw new Error(`${id} answers with no ${kind}.`);
  return output.fields;
};

/** Figures without a unit that are no counts. */
const PLAIN: Readonly<Record<string, string>> = {
  [fitRun.output.fields.rSquared.label]: '0.0000',
  [errorFields.autocorrelation.label]: '0.00',
  [errorFields.times.label]: '0.00',
};

const formatOfField = (label: string, unit: Unit): string => (unit === '' ? (PLAIN[label] ?? '0') : formatOf(unit));

/** The rows of a report as a sheet shows them: label and unit apart, a standard error in a row of its own. */
export const reportRows = (calculation: Calculation): readonly ReportRow[] =>
  Object.entries(fieldsOf(calculation, 'report')).flatMap(([key, field]): ReportRow[] => {
    const { label } = field;
    if ('text' in field) return [{ key, label, unit: '', format: 'General' }];
    const { unit } = field;
    const own = { key, label, unit, format: formatOfField(label, unit) };
    return field.error
      ? [own, { key: `${key}Error`, label: `${label}, standard error`, unit, format: finerFormatOf(unit) }]
      : [own];
  });

/**
 * A report beside its labels, one call for each column of figures. Its figures are marked
 * `name.key.column`, columns counted from 0.
 */
export function reportLines(
  columns: Columns,
  name: string,
  calculation: Calculation,
  answers: (at: At) => readonly string[],
): readonly Line[] {
  const rows = reportRows(calculation);
  const widths = columns.about - columns.unit - 1;
  return rows.map(({ key, label, unit, format }, index) => ({
    marks: Object.fromEntries(
      columns.figures.map((_, column): [string, Mark] => [`${name}.${key}.${column}`, { column: column + 1 }]),
    ),
    cells: (at) => {
      const formulas = index === 0 ? answers(at) : [];
      return [
        text(label, 'label'),
        ...columns.figures.map((_, column) => ({
          format,
          style: 'result' as const,
          ...(formulas[column] ? { formula: `=${inEachRow(columnOf(formulas[column], 2), rows.length)}` } : {}),
        })),
        text(shownUnit(unit), 'unit'),
        ...Array.from({ length: widths }, () => text('', 'note')),
        text(index === 0 ? calculation.method : '', 'note'),
      ];
    },
  }));
}

/** A table that one call spills, header row and all; `name` marks the whole of it, `name.key` a column. */
export function tableLines(
  name: string,
  calculation: Calculation,
  rows: number,
  answer: (at: At) => string,
  digits?: number,
): readonly Line[] {
  const declared = fieldsOf(calculation, 'table');
  const fields = Object.values(declared);
  const formats = fields.map((field) =>
    'text' in field
      ? 'General'
      : digits === undefined
        ? formatOfField(field.label, field.unit)
        : formatOf(field.unit, digits),
  );
  const marks = Object.fromEntries([
    [name, { column: 0, rows: rows + 1, columns: fields.length }],
    ...Object.keys(declared).map((key, column): [string, Mark] => [`${name}.${key}`, { column, rows: rows + 1 }]),
  ]);
  return Array.from({ length: rows + 1 }, (_, row) => ({
    ...(row === 0 ? { marks } : {}),
    cells: (at: At) =>
      row === 0
        ? formats.map((_, column) => ({
            ...(column === 0 ? { formula: `=${answer(at)}`, style: 'heading' as const } : text('', 'heading')),
            ...('text' in (fields[column] ?? {}) ? {} : { align: 'right' as const }),
          }))
        : formats.map((format) => ({ format, style: 'result' as const })),
  }));
}
