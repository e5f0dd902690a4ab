import { CellError, call } from '../functions/answers.js';

/** The one number of a call with single cells, or a failed test. */
export function number(id: string, ...args: readonly unknown[]): number {
  const answer = call(id, ...args.map((one) => (Array.isArray(one) ? one.map((cell) => [cell]) : [[one]])));
  const cell = Array.isArray(answer) ? answer[0][0] : answer;
  if (typeof cell === 'number') return cell;
  throw new Error(cell instanceof CellError ? `${cell.code} ${cell.message}` : String(cell));
}
