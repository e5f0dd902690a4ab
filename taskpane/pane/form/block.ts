import { parametersOf } from '../../../functions/parameters.js';
import type { Calculation } from '../../../src/core/calculation.js';
import { evaluateCells, type Handed, isOneCell } from '../../../src/core/evaluate.js';
import { labelled } from '../../../src/core/wording.js';
import type { Block } from '../../host/host.js';
import { Canvas } from '../canvas.js';
import { unitBeside } from '../formats.js';
import { answerCells } from './answerCells.js';
import { type Place, putInputs } from './inputCells.js';

export interface LaidOut {
  readonly block: Block;
  /** Where the formula stands in the block. */
  readonly formula: Place;
  /** How many cells the answer fills. */
  readonly rows: number;
  readonly columns: number;
  /** A whole-range input can grow downwards, so its answer stands beside it. */
  readonly beside: boolean;
}

/** A calculation's inputs with labels and units, and its formula, as cells to be written at one place. */
export function layOut(calculation: Calculation, handed: Readonly<Record<string, Handed>>): LaidOut {
  const { id, inputs, output, summary } = calculation;
  const canvas = new Canvas();
  canvas.put(0, 0, { text: summary, style: 'note' });
  const { places, firstRow } = putInputs(canvas, inputs, handed);
  const beside = !Object.values(inputs).every(isOneCell);

  const answer = evaluateCells(calculation, handed);
  const filled = Array.isArray(answer) ? (answer as readonly (readonly unknown[])[]) : [];
  const cells = answerCells(output, filled);
  const [rows, columns] = [cells.length, Math.max(...cells.map((row) => row.length))];
  const labelsAbove = output.kind === 'row' || output.kind === 'column' ? 1 : 0;
  const besideTop = output.kind === 'column' ? firstRow - 1 : 1;
  const [top, left] = beside ? [besideTop, canvas.width + 1] : [canvas.height, 0];
  const labelBeside = output.kind === 'number' || output.kind === 'text' ? 1 : 0;
  const place: Place = [top + labelsAbove, left + labelBeside];

  if (output.kind === 'number') canvas.put(top, left + 2, { text: unitBeside(output.unit), style: 'unit' });
  if ('label' in output) canvas.put(top, left, { text: output.label, style: labelsAbove ? 'heading' : 'label' });
  if (output.kind === 'row') {
    const labels = Object.values(output.fields).map((one) =>
      'text' in one ? one.label : labelled(one.label, one.unit),
    );
    canvas.put(top, left, ...labels.map((text) => ({ text, style: 'heading' as const })));
  }
  for (const [index, row] of cells.entries()) canvas.put(place[0] + index, place[1], ...row);
  const parameters = parametersOf(inputs).map(({ name }) => places[name]);
  while (parameters.length > 0 && parameters.at(-1) === undefined) parameters.pop();
  canvas.put(...place, {
    ...cells[0]?.[0],
    formula: (at) => `=POWDER.${id}(${parameters.map((one) => one?.(at) ?? '').join(',')})`,
  });
  return { block: canvas.block(), formula: place, rows, columns, beside };
}
