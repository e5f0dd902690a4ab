import type { Univer } from '../core.js';
import { LexerNode, LexerTreeBuilder, OPERATOR_TOKEN_SET } from '../formula.js';
import { servicesOf } from '../services.js';

/** A minus before a text, a truth or an array, which the engine takes for a name. */
const NEGATIVE = /^\s*-\s*(TRUE|FALSE|"(?:[^"]|"")*"|\{[^{}]*\})\s*$/i;

/** What the engine's reader of formulas does where it is wrong. */
interface Reader {
  readonly _currentLexerNode: LexerNode;
  _formulaSpellCheck(): boolean;
  _suffixExpressionHandler(node: LexerNode): boolean;
}

/** A minus as a step of its own, with what it stands before. */
function negative(child: string, parent: LexerNode): LexerNode | string {
  const [, value] = NEGATIVE.exec(child) ?? [];
  if (value === undefined) return child;
  const minus = new LexerNode();
  minus.setToken('-');
  minus.setParent(parent);
  minus.addChildren(value);
  return minus;
}

/**
 * What: `=2*{1,2}`, `=SUM(A1*{1;2})`; `=-TRUE`, `=2*-"3"`. Expected: 2 and 4, the sum; -1, -6 (OpenFormula 1.2, 5.2 and 5.14).
 * Got: #VALUE!, since of what stands before an array only the first part is looked at; #NAME?.
 */
export function mendFormulaReader(univer: Univer): void {
  const reader = servicesOf(univer).get(LexerTreeBuilder) as unknown as Reader;
  const check = reader._formulaSpellCheck.bind(reader);
  const order = reader._suffixExpressionHandler.bind(reader);
  reader._formulaSpellCheck = () => {
    const last = reader._currentLexerNode.getChildren().at(-1);
    return (typeof last === 'string' && (last === '(' || OPERATOR_TOKEN_SET.has(last))) || check();
  };
  reader._suffixExpressionHandler = (node) => {
    node.setChildren(node.getChildren().map((one) => (typeof one === 'string' ? negative(one, node) : one)));
    return order(node);
  };
}
