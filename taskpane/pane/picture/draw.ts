import { parametersOf } from '../../../functions/parameters.js';
import { catalogue } from '../../../src/catalogue.js';
import type { Calculation } from '../../../src/core/calculation.js';
import { isNoAnswer, isOneCell, readCells } from '../../../src/core/evaluate.js';
import { isRefused } from '../../../src/core/read.js';
import type { Matrix } from '../../formula/arithmetic.js';
import { Evaluator } from '../../formula/evaluate.js';
import { handedBy } from '../../formula/handed.js';
import { type Call, readFormula } from '../../formula/readFormula.js';
import { referencesIn } from '../../formula/references.js';
import { Unknown } from '../../formula/unknown.js';
import type { Cells, Host, Selection } from '../../host/host.js';
import type { Reference } from '../../host/reference.js';
import { CellError } from '../../workbook/formula/cellError.js';
import { FIGURES } from './figures/index.js';
import type { Picture } from './picture.js';
import type { Speech } from './speech.js';

export type Drawn =
  | { readonly kind: 'picture'; readonly id: string; readonly picture: Picture }
  /** Only the workbook can calculate it, and why. */
  | { readonly kind: 'unknown'; readonly unknown: Unknown }
  /** The library's own sentence. */
  | { readonly kind: 'refused'; readonly id: string; readonly sentence: string };

/** The first call that has a picture; those further out come first. */
export function picturedCall(calls: readonly Call[]): Call | undefined {
  for (const call of calls) {
    const found = FIGURES.has(call.id) ? call : picturedCall(call.calls);
    if (found) return found;
  }
  return undefined;
}

const keyOf = (reference: Reference): string => JSON.stringify(reference);

/** Everything that a call refers to, read at once. */
async function reader({ node }: Call, sheet: string, host: Pick<Host, 'read'>) {
  const wanted = new Map(referencesIn(node, sheet).map((one) => [keyOf(one), one]));
  const read = wanted.size > 0 ? await host.read([...wanted.values()]) : [];
  const held = new Map<string, Cells | undefined>([...wanted.keys()].map((key, index) => [key, read[index]]));
  return (reference: Reference) => held.get(keyOf(reference));
}

/** Error cells and ranges in one-cell inputs are refused by the worksheet function, before the library sees them. */
const isOdd = ({ inputs }: Calculation, given: readonly (Matrix | null)[]): boolean => {
  const parameters = parametersOf(inputs);
  return given.some((matrix, index) => {
    const input = parameters[index]?.input;
    if (!input) return true;
    const cells = matrix?.flat() ?? [];
    return cells.some((one) => one instanceof CellError) || (isOneCell(input) && cells.length > 1);
  });
};

/** The error in an answer that is nothing but an error. */
const errorIn = (answer: unknown): CellError | undefined =>
  Array.isArray(answer) && answer[0]?.[0] instanceof CellError ? answer[0][0] : undefined;

/** The picture of what a formula calculates; undefined where none of its functions has one. */
export async function draw(
  { formula = '', sheet }: Selection,
  host: Pick<Host, 'read'>,
  speech: Speech,
): Promise<Drawn | undefined> {
  const call = picturedCall(readFormula(formula).calls);
  const calculation = catalogue.find(({ id }) => id === call?.id);
  if (!call || !calculation) return undefined;
  const { id } = call;
  // Inside LET a word may be a value of the formula's own, which no workbook can be asked for.
  if (call.local) return { kind: 'unknown', unknown: new Unknown('function', 'LET') };
  const evaluator = new Evaluator(sheet, await reader(call, sheet, host));
  const given = evaluator.inputs(call.node);
  if (given instanceof Unknown) return { kind: 'unknown', unknown: given };
  const error = isOdd(calculation, given) ? errorIn(evaluator.value(call.node)) : undefined;
  if (error) return { kind: 'refused', id, sentence: error.message || error.code };
  const si = readCells(calculation, handedBy(calculation.inputs, given));
  if (isRefused(si)) return { kind: 'refused', id, sentence: si.refused };
  const picture = FIGURES.get(id)?.(si, speech);
  if (!picture) return undefined;
  if (isNoAnswer(picture)) return { kind: 'refused', id, sentence: picture.none };
  return isRefused(picture) ? { kind: 'refused', id, sentence: picture.refused } : { kind: 'picture', id, picture };
}
