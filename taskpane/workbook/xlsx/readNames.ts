import type { KeptName } from './book.js';
import { LIMITS } from './limits.js';
import { meaningOf } from './names.js';
import type { Reading } from './reading.js';
import { attribute, childOf, childrenOf, isTrue, whole, type XmlElement } from './readXml.js';

export interface Names {
  /** Of each sheet, by its name in small letters: name → address on it. */
  readonly ofSheet: ReadonlyMap<string, Readonly<Record<string, string>>>;
  /** Names that stand for a value: name → the value as a formula. */
  readonly values: Readonly<Record<string, string>>;
  /** Names that are known on one sheet only: name → that sheet. */
  readonly scopes: Readonly<Record<string, string>>;
  readonly kept: readonly KeptName[];
}

/** Names that a file gives to what is printed, filtered and the like. */
const OF_THE_PROGRAM = /^_xl|^_\.|^Print_/i;
const USUAL = /^[\p{L}_\\][\p{L}\p{N}_.\\?]*$/u;

/** What the file says of a name, whether the grid can use it or not. */
function listedNames(workbook: XmlElement, { leftOut }: Reading): KeptName[] {
  const sheets = childrenOf(childOf(workbook, 'sheets'), 'sheet').map((one) => attribute(one, 'name'));
  const listed = childrenOf(childOf(workbook, 'definedNames'), 'definedName');
  if (listed.length > LIMITS.names) leftOut.add('names');
  return listed.slice(0, LIMITS.names).flatMap((one) => {
    const name = attribute(one, 'name') ?? '';
    const text = one.textContent?.trim() ?? '';
    if (OF_THE_PROGRAM.test(name)) return [];
    if (!USUAL.test(name) || text.length > LIMITS.formula) {
      leftOut.add('names');
      return [];
    }
    const scope = sheets[whole(attribute(one, 'localSheetId')) ?? -1];
    return [{ name, text, ...(scope ? { scope } : {}), ...(isTrue(attribute(one, 'hidden')) ? { hidden: true } : {}) }];
  });
}

/** What each name stands for. What the grid cannot use is kept as it stands, for when the workbook is saved again. */
export function namesOf(workbook: XmlElement, sheets: readonly string[], reading: Reading): Names {
  const { leftOut } = reading;
  const ofSheet = new Map(sheets.map((name) => [name.toLowerCase(), Object.create(null) as Record<string, string>]));
  const values: Record<string, string> = Object.create(null);
  const scopes: Record<string, string> = Object.create(null);
  const kept: KeptName[] = [];
  const listed = listedNames(workbook, reading);
  const count = new Map<string, number>();
  for (const { name } of listed) count.set(name.toLowerCase(), (count.get(name.toLowerCase()) ?? 0) + 1);
  for (const one of listed) {
    const { name, text, scope, hidden } = one;
    // The grid knows one name of a kind in a workbook, and no sheet's own.
    const several = (count.get(name.toLowerCase()) ?? 0) > 1;
    const meaning = hidden || several ? undefined : meaningOf(text);
    const place = meaning && 'sheet' in meaning ? ofSheet.get(meaning.sheet.toLowerCase()) : values;
    if (!meaning || !place) {
      leftOut.add(several ? 'sameNames' : hidden ? 'hiddenNames' : 'names');
      kept.push(one);
      continue;
    }
    place[name] = 'sheet' in meaning ? meaning.range : meaning.value;
    if (scope) scopes[name] = scope;
    reading.names.set(name.toLowerCase(), name);
    if ('sheet' in meaning) reading.ranges.set(name.toLowerCase(), meaning.range);
  }
  return { ofSheet, values, scopes, kept };
}
