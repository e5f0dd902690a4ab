import type { Handed } from '../../../src/core/evaluate.js';
import type { Cell, Input, Inputs, PlanCells, PlanInput } from '../../../src/core/input.js';
import { labelled } from '../../../src/core/wording.js';
import type { BlockCell } from '../../host/host.js';
import type { Canvas } from '../canvas.js';
import { unitBeside } from '../formats.js';
import { formatOf } from './answerCells.js';
import { planLabels } from './draft.js';

export type Place = readonly [row: number, column: number];
type At = (row: number, column: number) => string;
/** The reference by which a formula reaches an input, once the block has its place. */
export type Reference = (at: At) => string;

/** Free rows below a series: a log grows, and blank rows at its end are passed over. */
const ROOM = 10;

function valueCell(cell: Cell, input: Input | { readonly unit: Parameters<typeof formatOf>[0] }): BlockCell {
  const look = { style: 'input', ...('unit' in input ? formatOf(input.unit) : {}) } as const;
  if (typeof cell === 'number') return { number: cell, ...look };
  return cell === null || cell === '' ? look : { text: String(cell), ...look };
}

const range =
  (from: Place, to: Place): Reference =>
  (at) =>
    from[0] === to[0] && from[1] === to[1] ? at(...from) : `${at(...from)}:${at(...to)}`;

type WholeColumn = readonly [name: string, input: Extract<Input, { kind: 'series' | 'names' }>, cells: readonly Cell[]];

/** Series and names side by side under their labels, since they pair up by position. */
function putColumns(canvas: Canvas, columns: readonly WholeColumn[]): Record<string, Reference> {
  const top = canvas.height + 1;
  const longest = Math.max(...columns.map(([, , cells]) => cells.length));
  const places: Record<string, Reference> = {};
  for (const [column, [name, input, cells]] of columns.entries()) {
    const text = 'unit' in input ? labelled(input.label, input.unit) : input.label;
    canvas.put(top, column, { text, style: 'heading' });
    const single = input.kind === 'series' && input.oneForAll && cells.length === 1;
    const length = single ? 1 : longest + ROOM;
    for (let row = 0; row < length; row++) canvas.put(top + 1 + row, column, valueCell(cells[row] ?? null, input));
    places[name] = range([top + 1, column], [top + length, column]);
  }
  return places;
}

/** A plan: a column of labels, its columns of values, then unit and group as a help to the reader. */
function putPlan(canvas: Canvas, key: string, input: PlanInput, { columns }: PlanCells): Record<string, Reference> {
  const top = canvas.height + 1;
  const names = Object.keys(input.columns);
  const heading = (text: string): BlockCell => ({ text, style: 'heading' });
  const columnLabels = Object.values(input.columns).map(({ label }) => heading(label));
  canvas.put(top, 0, heading(input.label), ...columnLabels, heading('Unit'), heading('Group'));
  const labels = planLabels(input);
  for (const [row, [, label]] of labels.entries()) {
    const values = names.map((name) => valueCell(columns[name]?.[row] ?? null, label));
    const about: BlockCell[] = [unitBeside(label.unit), label.group].map((text) => ({ text, style: 'unit' }));
    canvas.put(top + 1 + row, 0, { text: label.label, style: 'label' }, ...values, ...about);
  }
  const down = (column: number): Reference => range([top + 1, column], [top + labels.length, column]);
  return { [key]: down(0), ...Object.fromEntries(names.map((name, index) => [name, down(index + 1)])) };
}

/** Puts every input that was given on the canvas. What was left out gets no cell and no reference. */
export function putInputs(canvas: Canvas, inputs: Inputs, handed: Readonly<Record<string, Handed>>) {
  const places: Record<string, Reference> = {};
  const columns: WholeColumn[] = [];
  const plans: (readonly [string, PlanInput])[] = [];
  for (const [key, input] of Object.entries(inputs)) {
    const value = handed[key];
    if (value === undefined) continue;
    if (input.kind === 'plan') plans.push([key, input]);
    else if (input.kind === 'series' || input.kind === 'names') columns.push([key, input, value as readonly Cell[]]);
    else {
      const row = canvas.height;
      const unit = 'unit' in input ? unitBeside(input.unit) : '';
      canvas.put(row, 0, { text: input.label, style: 'label' }, valueCell(value as Cell, input), {
        text: unit,
        style: 'unit',
      });
      places[key] = range([row, 1], [row, 1]);
    }
  }
  // Where the first column of values begins: an answer that goes with its rows stands beside it.
  const firstRow = canvas.height + 2;
  for (const [key, input] of plans) Object.assign(places, putPlan(canvas, key, input, handed[key] as PlanCells));
  if (columns.length > 0) Object.assign(places, putColumns(canvas, columns));
  return { places, firstRow };
}
