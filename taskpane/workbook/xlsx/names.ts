import { tokenize } from '@borgar/fx/xlsx';
import { fixed } from '../../host/a1.js';
import { rectangleOf } from './readPlaces.js';

const CONSTANT = new Set<string>(['number', 'string', 'bool']);
const REFERENCE = /^(?:'((?:[^']|'')+)'|([^'!]+))!([$A-Z0-9:]+)$/i;

/** What a name stands for: one range on one sheet, or one value as a formula. */
export type Meaning = { readonly sheet: string; readonly range: string } | { readonly value: string };

/** The meaning of a name's text, unless it is computed: names that stand for other names could go round in a circle. */
export function meaningOf(written: string): Meaning | undefined {
  const text = written.replace(/^=/, '');
  const tokens = tokenize(text);
  const [first, second] = tokens;
  if (tokens.length === 1 && CONSTANT.has(first?.type ?? '')) return { value: `=${text}` };
  if (tokens.length === 2 && first?.value === '-' && second?.type === 'number') return { value: `=${text}` };
  const [, quoted, plain = '', range = ''] = REFERENCE.exec(text) ?? [];
  const sheet = quoted?.replaceAll("''", "'") ?? plain;
  return rectangleOf(range) && !/[[:]/.test(sheet) ? { sheet, range: range.replaceAll('$', '') } : undefined;
}

/** A sheet's name as a formula writes it. */
export const quotedSheet = (sheet: string): string => `'${sheet.replaceAll("'", "''")}'`;

/** A place on a sheet as a name writes it, which stays where it is. */
export const placeOnSheet = (sheet: string, range: string): string => `${quotedSheet(sheet)}!${fixed(range)}`;

/** The sheet before the mark in `'Plan 1'!A1` or `Plan!dose`. */
const sheetBefore = (reference: string): string | undefined => {
  const [, quoted, plain] = /^(?:'((?:[^']|'')+)'|([^'!]+))!/.exec(reference) ?? [];
  return quoted?.replaceAll("''", "'") ?? plain;
};

/** Whether all sheets that a text of a file reads are there: another program calls a file damaged where one is not. */
export function readsOnly(text: string, sheets: readonly string[]): boolean {
  const known = new Set(sheets.map((name) => name.toLowerCase()));
  return tokenize(text)
    .flatMap(({ type, value }) => (type === 'context' ? [value] : [sheetBefore(value)]))
    .every((sheet) => sheet === undefined || sheet.split(':').every((one) => known.has(one.toLowerCase())));
}
