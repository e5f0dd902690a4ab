import { tokenize } from '@borgar/fx/xlsx';
import { LIMITS } from './limits.js';
import type { Reading } from './reading.js';
import { rectangleOf } from './readPlaces.js';
import { attribute, childOf, childrenOf, isTrue, type XmlElement } from './readXml.js';

export interface Names {
  /** Of each sheet, by its name in small letters: name → address on it. */
  readonly ofSheet: ReadonlyMap<string, Readonly<Record<string, string>>>;
  /** Names that stand for a value: name → the value as a formula. */
  readonly values: Readonly<Record<string, string>>;
}

/** Names that a file gives to what is printed, filtered and the like. */
const OF_THE_PROGRAM = /^_xl|^_\.|^Print_/i;
const USUAL = /^[\p{L}_\\][\p{L}\p{N}_.\\?]*$/u;
const CONSTANT = new Set<string>(['number', 'string', 'bool']);

const REFERENCE = /^(?:'((?:[^']|'')+)'|([^'!]+))!([$A-Z0-9:]+)$/i;

/** One range on one sheet, or one value: names that stand for other names could go round in a circle. */
function meaningOf(text: string): { sheet: string; range: string } | { value: string } | undefined {
  const tokens = tokenize(text);
  const [first, second] = tokens;
  if (tokens.length === 1 && CONSTANT.has(first?.type ?? '')) return { value: `=${text}` };
  if (tokens.length === 2 && first?.value === '-' && second?.type === 'number') return { value: `=${text}` };
  const [, quoted, plain = '', range = ''] = REFERENCE.exec(text) ?? [];
  const sheet = quoted?.replaceAll("''", "'") ?? plain;
  return rectangleOf(range) && !sheet.includes('[') ? { sheet, range: range.replaceAll('$', '') } : undefined;
}

export function namesOf(workbook: XmlElement, sheets: readonly string[], { leftOut }: Reading): Names {
  const ofSheet = new Map(sheets.map((name) => [name.toLowerCase(), Object.create(null) as Record<string, string>]));
  const values: Record<string, string> = Object.create(null);
  const known = new Set<string>();
  const listed = childrenOf(childOf(workbook, 'definedNames'), 'definedName');
  if (listed.length > LIMITS.names) leftOut.add('names');
  for (const one of listed.slice(0, LIMITS.names)) {
    const name = attribute(one, 'name') ?? '';
    if (OF_THE_PROGRAM.test(name) || isTrue(attribute(one, 'hidden'))) continue;
    const text = one.textContent?.trim() ?? '';
    const meaning = USUAL.test(name) && text.length <= LIMITS.formula ? meaningOf(text) : undefined;
    const place = meaning && 'sheet' in meaning ? ofSheet.get(meaning.sheet.toLowerCase()) : values;
    if (!meaning || !place) {
      leftOut.add('names');
      continue;
    }
    // The grid knows one name of a kind in a workbook.
    if (known.has(name.toLowerCase())) {
      leftOut.add('sameNames');
      continue;
    }
    known.add(name.toLowerCase());
    place[name] = 'sheet' in meaning ? meaning.range : meaning.value;
  }
  return { ofSheet, values };
}
