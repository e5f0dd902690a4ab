import type { SheetCondition, Validation } from '../../../src/sheets/sheet.js';
import { a1 } from '../../host/a1.js';
import { lookOfFill } from '../../host/judgedLooks.js';
import { LIMITS } from './limits.js';
import type { Attributes } from './pageSetup.js';
import type { Rows } from './readCells.js';
import { formulaOf } from './readFormula.js';
import type { OpenWords, Reading } from './reading.js';
import { type Rectangle, rectanglesOf } from './readPlaces.js';
import { attribute, childOf, childrenOf, unescaped, whole, type XmlElement } from './readXml.js';

const LONGEST_MESSAGE = 255;
const textIn = (element: XmlElement, name: string) => childOf(element, name)?.textContent?.trim() ?? '';

const said = (rule: XmlElement, name: string): string => unescaped(attribute(rule, name) ?? '');

function limitOf(rule: XmlElement): readonly [number, number] | undefined {
  const [one, other] = ['formula1', 'formula2'].map((name) => Number(textIn(rule, name) || Number.NaN));
  const first = one ?? Number.NaN;
  const limits: Record<string, readonly [number, number | undefined]> = {
    between: [first, other],
    greaterThanOrEqual: [first, Number.MAX_VALUE],
    lessThanOrEqual: [-Number.MAX_VALUE, first],
    equal: [first, first],
  };
  const [least, most] = limits[attribute(rule, 'operator') ?? 'between'] ?? [];
  return Number.isFinite(least) && Number.isFinite(most) ? [least as number, most as number] : undefined;
}

function limitWords([least, most]: readonly [number, number], words: OpenWords): string {
  if (most === Number.MAX_VALUE) return words.atLeast(least);
  return least === -Number.MAX_VALUE ? words.atMost(most) : words.between(least, most);
}

/** A rule for entries, where the grid knows its kind. */
function validationOf(rule: XmlElement, { words }: Reading): Validation | undefined {
  const kind = attribute(rule, 'type');
  const own = (said(rule, 'error') || said(rule, 'prompt')).slice(0, LONGEST_MESSAGE);
  const [, listed] = /^"(.*)"$/s.exec(textIn(rule, 'formula1')) ?? [];
  if (kind === 'list' && listed !== undefined) {
    const of = listed.split(',').map((one) => one.trim().replaceAll('""', '"'));
    return { kind: 'list', of, message: own || words.oneOf(of.join(', ')) };
  }
  const limit = kind === 'decimal' ? limitOf(rule) : undefined;
  return limit && { kind: 'number', limit, message: own || limitWords(limit, words) };
}

/** What a rule says besides its limits and its note, which the grid has no place for and the file keeps. */
const BESIDES = ['errorStyle', 'errorTitle', 'error', 'promptTitle', 'allowBlank', 'showErrorMessage', 'showDropDown'];

const saidBesides = (rule: XmlElement): Attributes =>
  Object.fromEntries(
    BESIDES.flatMap((name) => {
      const value = said(rule, name).slice(0, LONGEST_MESSAGE);
      return value === '' ? [] : [[name, value]];
    }),
  );

/** Rows of a rule that are taken whether the sheet is used there or not. */
const MOST_ROWS = 1000;

/** Where a rule holds, or as far as the sheet is used: rules are often given for whole columns. */
function* placesIn({ top, left, bottom, right }: Rectangle, used: number) {
  const rows = bottom - top < MOST_ROWS ? bottom + 1 : used;
  for (let row = top; row <= Math.min(bottom, rows - 1); row += 1)
    for (let column = left; column <= Math.min(right, LIMITS.columns - 1); column += 1) yield { row, column };
}

/** Gives the cells their rules for entries, and the notes that such a rule shows. */
export function addValidations(sheet: XmlElement, rows: Rows, reading: Reading): void {
  const rules = childrenOf(childOf(sheet, 'dataValidations'), 'dataValidation');
  if (rules.length > LIMITS.rules) reading.leftOut.add('validations');
  const { taken } = reading;
  for (const rule of rules.slice(0, LIMITS.rules)) {
    const validation = validationOf(rule, reading);
    const note = said(rule, 'prompt') || undefined;
    const ruled = { ...(validation ? { validation } : {}), ...(note ? { note } : {}), rule: saidBesides(rule) };
    // A rule that allows anything only shows its note.
    if (!validation && (attribute(rule, 'type') ?? 'none') !== 'none') reading.leftOut.add('validations');
    for (const range of validation || note ? rectanglesOf(attribute(rule, 'sqref') ?? '', LIMITS.rules) : []) {
      for (const { row, column } of placesIn(range, rows.length)) {
        taken.ruled += 1;
        if (taken.ruled > LIMITS.ruled) return void reading.leftOut.add('validations');
        rows[row] ??= [];
        const line = rows[row] as Rows[number];
        line[column] = { ...line[column], ...ruled };
      }
    }
  }
}

/** Formats of whole columns reach as far as anyone is likely to type: each of their cells is calculated. */
const ROWS_FOR_ENTRIES = 1000;

/** The conditional formats that hang on a formula, in Powderbook’s own two looks. */
export function conditionsOf(
  sheet: XmlElement,
  fills: readonly (string | undefined)[],
  rows: Rows,
  reading: Reading,
): SheetCondition[] {
  const found = childrenOf(sheet, 'conditionalFormatting').flatMap((block) =>
    childrenOf(block, 'cfRule').map((rule) => ({ rule, where: attribute(block, 'sqref') ?? '' })),
  );
  if (found.length > LIMITS.rules) reading.leftOut.add('conditions');
  const rank = ({ rule }: (typeof found)[number]) => whole(attribute(rule, 'priority')) ?? 0;
  const ranked = found.sort((one, other) => rank(one) - rank(other));
  return ranked.slice(0, LIMITS.rules).flatMap(({ rule, where }) => {
    const read = attribute(rule, 'type') === 'expression' ? formulaOf(textIn(rule, 'formula'), reading) : undefined;
    const ranges = rectanglesOf(where, 1);
    const [range] = ranges;
    if (!read || 'problem' in read || !range || where.includes(' ')) {
      reading.leftOut.add('conditions');
      return [];
    }
    const fill = fills[whole(attribute(rule, 'dxfId')) ?? -1];
    const own = lookOfFill(fill);
    const { top, left } = range;
    const bottom = Math.min(range.bottom, Math.max(rows.length, ROWS_FOR_ENTRIES) - 1);
    const right = Math.min(range.right, LIMITS.columns - 1);
    if (top > bottom || left > right) return [];
    const judged = (bottom - top + 1) * (right - left + 1);
    if (reading.taken.judged + judged > LIMITS.judged) {
      reading.leftOut.add('conditions');
      return [];
    }
    reading.taken.judged += judged;
    if (!own) reading.leftOut.add('conditionLooks');
    return [{ range: `${a1(top, left)}:${a1(bottom, right)}`, formula: read.formula, look: own ?? 'unusual' }];
  });
}
