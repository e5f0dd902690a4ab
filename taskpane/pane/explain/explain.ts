import type { AstExpression } from '@borgar/fx';
import { catalogue } from '../../../src/catalogue.js';
import type { Calculation } from '../../../src/core/calculation.js';
import type { Matrix } from '../../formula/arithmetic.js';
import { Evaluator } from '../../formula/evaluate.js';
import { type Given, givenTo } from '../../formula/given.js';
import { type Judged, judged } from '../../formula/judge.js';
import { type Call, readFormula } from '../../formula/readFormula.js';
import { referencesIn } from '../../formula/references.js';
import { Unknown } from '../../formula/unknown.js';
import type { Cells, Host, Selection } from '../../host/host.js';
import type { Reference } from '../../host/reference.js';

export interface ExplainedInput {
  readonly given: Given;
  readonly judged: readonly Judged[];
  /** Calls of our functions within what stands for this input. */
  readonly calls: readonly Explained[];
}

/** One call of one of our functions, with all that stands behind it. */
export interface Explained {
  readonly calculation: Calculation;
  readonly inputs: readonly ExplainedInput[];
  readonly result: Matrix | Unknown;
}

function contains(root: AstExpression | null | undefined, node: AstExpression): boolean {
  if (!root) return false;
  if (root === node) return true;
  if (root.type === 'ArrayExpression') return root.elements.flat().some((one) => contains(one, node));
  return 'arguments' in root && root.arguments.some((one) => contains(one, node));
}

function explainCall(call: Call, evaluator: Evaluator, sheet: string): readonly Explained[] {
  const calculation = catalogue.find(({ id }) => id === call.id);
  if (!calculation) return [];
  const all = givenTo(call, calculation, evaluator, sheet);
  const inputs = all.map((given) => ({
    given,
    judged: judged(given, all),
    calls: call.calls
      .filter(({ node }) => contains(given.node, node))
      .flatMap((one) => explainCall(one, evaluator, sheet)),
  }));
  const value = call.local ? new Unknown('function', 'LET') : evaluator.value(call.node);
  return [{ calculation, inputs, result: value ?? [] }];
}

/** Reads all that the selected formula refers to at once, and explains each of its calls. */
export async function explain({ sheet, formula }: Selection, host: Host): Promise<readonly Explained[]> {
  const { calls } = readFormula(formula ?? '');
  if (calls.length === 0) return [];
  const wanted = new Map<string, Reference>();
  for (const { node } of calls) {
    for (const one of referencesIn(node, sheet)) wanted.set(JSON.stringify(one), one);
  }
  const read = await host.read([...wanted.values()]);
  const cells = new Map<string, Cells | undefined>([...wanted.keys()].map((key, index) => [key, read[index]]));
  const evaluator = new Evaluator(sheet, (reference) => cells.get(JSON.stringify(reference)));
  return calls.flatMap((call) => explainCall(call, evaluator, sheet));
}
