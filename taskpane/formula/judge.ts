import { isOneCell } from '../../src/core/evaluate.js';
import type { Cell, PlanInput } from '../../src/core/input.js';
import { labelKey } from '../../src/core/planLabels.js';
import { isRefused, readOmitted } from '../../src/core/read.js';
import type { Found } from '../../src/safety/find.js';
import { verdict } from '../../src/safety/rangeCheck.js';
import { CellError } from '../workbook/formula/cellError.js';
import type { Scalar } from './arithmetic.js';
import type { Given } from './given.js';
import { Unknown } from './unknown.js';

export type Judgement = 'usual' | 'unusual' | 'refused' | 'error' | 'none';

/** One value that an input received, judged as RANGECHECK does. */
export interface Judged {
  readonly input: Found;
  readonly cell: Scalar;
  /** Where it stands in what was handed over, from 0. */
  readonly row: number;
  readonly column: number;
  readonly judgement: Judgement;
  /** Why it is not usual. */
  readonly sentence?: string;
}

const isBlank = (cell: Scalar): boolean => cell === null || cell === '' || cell === 0;

function judge(input: Found, cell: Scalar): Pick<Judged, 'judgement' | 'sentence'> {
  if (cell instanceof CellError) return { judgement: 'error', sentence: cell.message || cell.code };
  if (!('limit' in input) && input.kind !== 'choice') return { judgement: 'none' };
  const said = verdict(input, cell as Cell);
  const [judgement = 'usual', ...rest] = said.split(': ');
  if (said === 'usual') return { judgement: 'limit' in input && !input.usual ? 'none' : 'usual' };
  return { judgement: judgement as Judgement, sentence: rest.join(': ') };
}

/** The labels of a plan's rows come from its first range. */
function planLabel(input: PlanInput, labels: Given | undefined, row: number): Found | undefined {
  if (!labels?.value || labels.value instanceof Unknown) return undefined;
  const text = labels.value.flat()[row];
  const key = typeof text === 'string' ? labelKey(input.table, text) : undefined;
  const label = key === undefined ? undefined : input.table[key];
  return label && input.groups.includes(label.group) ? { kind: 'plan label', ...label } : undefined;
}

/** Every value of one input, judged. A blank place of a log and of an optional label is passed over. */
export function judged(given: Given, all: readonly Given[]): readonly Judged[] {
  const { parameter, value } = given;
  const { input } = parameter;
  if (value instanceof Unknown || (input.kind === 'plan' && parameter.column === undefined)) return [];
  if (value === null) return omitted(given);
  const labels = all.find((one) => one.parameter.key === parameter.key && one.parameter.column === undefined);
  const found: Judged[] = [];
  let place = 0;
  for (const [row, line] of value.entries()) {
    for (const [column, cell] of line.entries()) {
      const own = input.kind === 'plan' ? planLabel(input, labels, place) : input;
      place++;
      if (!own) continue;
      const mayBeBlank =
        input.kind === 'series' ? cell === null : isBlank(cell) && own.kind === 'plan label' && own.optional;
      if (!mayBeBlank) found.push({ input: own, cell, row, column, ...judge(own, cell) });
    }
  }
  return found;
}

function omitted({ parameter: { input } }: Given): readonly Judged[] {
  if (!isOneCell(input)) return [];
  const read = readOmitted(input);
  const place = { input, cell: null, row: 0, column: 0 };
  return isRefused(read) ? [{ ...place, judgement: 'refused', sentence: read.refused }] : [];
}
