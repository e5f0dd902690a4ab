import { NAMESPACE } from '../../../functions/metadata.js';
import { catalogue } from '../../../src/catalogue.js';
import { Evaluator } from '../../formula/evaluate.js';
import { type Given, givenTo } from '../../formula/given.js';
import { type Judged, judged } from '../../formula/judge.js';
import { type Call, readFormula } from '../../formula/readFormula.js';
import { referenceOf } from '../../formula/references.js';
import { Unknown } from '../../formula/unknown.js';
import { cellReference } from '../../host/address.js';
import type { CellContent } from '../../host/host.js';
import type { RangeReference } from '../../host/reference.js';
import { CellError } from '../../workbook/formula/cellError.js';
import type { Finding, Kind } from './finding.js';
import type { Snapshot } from './snapshot.js';

const CALCULATIONS = new Map(catalogue.map((one) => [one.id as string, one]));
const CIRCLE = '#CYCLE!';
const isError = (shown: CellContent): shown is string => typeof shown === 'string' && /^#[A-Z/0!?]+[!?A]$/.test(shown);
/** Functions that leave some of their inputs out: what they do not calculate refuses nothing. */
const CHOOSES = /\b(?:IF|IFS|SWITCH|CHOOSE)\s*\(/i;
/** Functions that put something else in the place of an error, which somebody may miss. */
const MASKS_ERRORS = /\bIF(?:ERROR|NA)\b/i;
/** Findings about one range: a whole column refused alike is told of by its first few cells. */
const MOST_OF_A_RANGE = 5;

/** One value that a function received, for the suspicions that compare many of them. */
export interface Received {
  readonly id: string;
  readonly one: Judged;
  readonly literal: boolean;
  readonly formula: RangeReference;
  /** The cell that it comes from. */
  readonly origin: RangeReference | undefined;
}

/** A share of 65, where 65 % is meant. */
function looksLikePercentage({ input, cell }: Judged): boolean {
  if (!('limit' in input) || input.unit !== 'fraction' || typeof cell !== 'number') return false;
  return cell > 1 && cell <= 100 && cell > input.limit[1];
}

const kindOf = (one: Judged): Kind | undefined => {
  if (looksLikePercentage(one)) return 'percentage';
  return one.judgement === 'refused' || one.judgement === 'unusual' ? one.judgement : undefined;
};

/** A calculated figure may pass the trade’s habit by a little, as a dry dose does of one that is usual as bought. */
const A_LITTLE = 0.05;

/** Whether a figure that a formula made lies so near to what is usual that nobody has to look. */
function isNearlyUsual({ input, cell }: Judged): boolean {
  if (!('limit' in input) || !input.usual || typeof cell !== 'number') return false;
  const [least, most] = input.usual;
  return cell >= least * (1 - A_LITTLE) && cell <= most * (1 + A_LITTLE);
}

export class FormulaCheck {
  readonly findings: Finding[] = [];
  formulas = 0;
  /** Input cells that were told of already: one bad cell may feed many formulas. */
  readonly #told = new Set<string>();
  /** Input cells of which the sheet itself says what is the matter. */
  readonly #judged = new Set<string>();

  constructor(
    private readonly snapshot: Snapshot,
    private readonly receive: (received: Received) => void,
  ) {}

  check(sheet: string, row: number, column: number, text: string, shown: CellContent): void {
    if (!text.toUpperCase().includes(NAMESPACE)) {
      // A circle is nobody's function: whatever formulas it leads through, none has an answer.
      if (shown === CIRCLE)
        this.findings.push({ kind: 'error', place: cellReference(sheet, row, column), subject: CIRCLE });
      return;
    }
    const { ids, calls } = readFormula(text);
    const broken = isError(shown);
    // A misspelt name is none of our functions, but its error is one that somebody has to find.
    if (ids.length === 0 && !broken) return;
    this.formulas++;
    const place = cellReference(sheet, row, column);
    const evaluator = new Evaluator(sheet, this.snapshot.read);
    const guarded = CHOOSES.test(text) && !MASKS_ERRORS.test(text);
    const refused = calls.filter((call) => this.call(call, evaluator, place, guarded)).length > 0;
    if (!broken || refused) return;
    const sentence =
      this.snapshot.contents.message?.(sheet, row, column) ??
      calls.map((call) => sentenceOf(call, evaluator, shown)).find((one) => one !== undefined);
    this.findings.push({ kind: 'error', place, subject: shown, ...(sentence ? { sentence } : {}) });
  }

  /** Whether an input of the call, or of a call inside it, is refused. */
  private call(call: Call, evaluator: Evaluator, place: RangeReference, guarded: boolean): boolean {
    const inside = call.calls.filter((one) => this.call(one, evaluator, place, guarded)).length > 0;
    const calculation = CALCULATIONS.get(call.id);
    if (!calculation) return inside;
    const all = givenTo(call, calculation, evaluator, place.sheet);
    let refused = inside;
    for (const given of all) {
      let told = 0;
      const range = given.reference && this.snapshot.rectangle(given.reference);
      for (const one of judged(given, all)) {
        const origin = range && cellReference(range.sheet, range.top + one.row, range.left + one.column);
        this.receive({ id: call.id, one, literal: given.node?.type === 'Literal', formula: place, origin });
        if (guarded && !this.isInEffect(place, one, origin)) continue;
        if (one.judgement === 'unusual' && this.isOnlyOnTheWay(given, one, origin)) continue;
        if (one.judgement === 'refused') refused = true;
        if (told < MOST_OF_A_RANGE && this.tell(call.id, given, one, origin ?? place)) told++;
      }
    }
    return refused;
  }

  /** Whether the answer at the place of this value shows what a refusal makes of it, or anything at all. */
  private isInEffect(
    { sheet, top, left }: RangeReference,
    { row, column, judgement }: Judged,
    origin: RangeReference | undefined,
  ): boolean {
    // The empty rows of a list are left out by its formulas.
    const given = origin && this.snapshot.cell('values', origin.sheet, origin.top, origin.left);
    if (origin && (given === null || given === '')) return false;
    const at = (down: number, right: number) => this.snapshot.cell('values', sheet, top + down, left + right);
    const [first, own] = [at(0, 0), at(row, column)];
    if (judgement === 'refused') return isError(first) || isError(own);
    return own !== null && own !== '';
  }

  /** Whether an unusual figure is nobody’s entry: worked out within the formula, or hardly off in a calculated cell. */
  private isOnlyOnTheWay({ node }: Given, one: Judged, origin: RangeReference | undefined): boolean {
    if ('preset' in one.input && one.input.preset === one.cell) return true;
    if (!origin) return node?.type === 'BinaryExpression' || node?.type === 'CallExpression';
    const { sheet, top, left } = origin;
    const content = this.snapshot.cell('formulas', sheet, top, left);
    return (typeof content === 'string' || content === null) && isNearlyUsual(one);
  }

  /** Takes over what a sheet says of its own cells: its judgements name the cell that they are about. */
  judgement(sheet: string, shown: CellContent): void {
    const [, kind, address = '', sentence = ''] =
      (typeof shown === 'string' && /^(refused|unusual): ([A-Z]{1,3}\d+) (.+?)(?:, example’s)?$/.exec(shown)) || [];
    if (kind === undefined) return;
    const place = referenceOf(address, sheet);
    if (place instanceof Unknown || place.kind !== 'range') return;
    const key = `${place.sheet} ${place.top} ${place.left}`;
    if (this.#judged.has(key)) return;
    this.#judged.add(key);
    const label = this.snapshot.cell('values', sheet, place.top, 0);
    const subject = typeof label === 'string' && !/^(?:refused|unusual): /.test(label) ? label : address;
    this.findings.push({ kind: kind as Kind, place, subject, sentence });
  }

  private tell(id: string, { parameter }: Given, one: Judged, place: RangeReference): boolean {
    const kind = kindOf(one);
    if (kind === undefined) return false;
    const label = one.input.label || parameter.label;
    const key = `${place.sheet} ${place.top} ${place.left} ${label} ${one.sentence}`;
    if (this.#told.has(key) || this.#judged.has(`${place.sheet} ${place.top} ${place.left}`)) return false;
    this.#told.add(key);
    const sentence = one.sentence ? { sentence: one.sentence } : {};
    this.findings.push({ kind, place, subject: `POWDER.${id}: ${label}`, ...sentence });
    return true;
  }
}

/** What our own function says at these inputs, where it gives the same error as the cell. */
function sentenceOf(call: Call, evaluator: Evaluator, code: string): string | undefined {
  if (call.local) return undefined;
  const result = evaluator.value(call.node);
  if (result === null || result instanceof Unknown) return undefined;
  const same = result.flat().find((cell) => cell instanceof CellError && cell.code === code && cell.message !== '');
  return (
    (same as CellError | undefined)?.message ?? call.calls.map((one) => sentenceOf(one, evaluator, code)).find(Boolean)
  );
}
