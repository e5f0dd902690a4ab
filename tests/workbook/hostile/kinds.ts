import { partsOf, rows, zipped } from '../xlsx/handMade.js';
import { HOSTILE_FORMULAS } from './formulas.js';
import { HOSTILE_STRUCTURES } from './structures.js';

const escaped = (text: string) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');

/** A formula of the younger kind, which fills cells, that has an answer already, and a text that such formulas search. */
const row = (formula: string) =>
  `<c cm="1"><f>${escaped(formula)}</f><v>7</v></c><c t="inlineStr"><is><t>${'a'.repeat(30_000)}</t></is></c>`;

export const fileOfFormulas = (...formulas: readonly string[]) =>
  zipped(partsOf({ sheets: [rows(...formulas.map(row))] }));

type Kind = readonly [kind: string, bytes: () => Uint8Array];

/** A file for each formula. */
export const HOSTILE_FORMULA_FILES: readonly Kind[] = Object.entries(HOSTILE_FORMULAS).map(([kind, formula]) => [
  kind,
  () => fileOfFormulas(formula),
]);

/** A file for each way of being hostile by more than a formula. */
export const HOSTILE_STRUCTURE_FILES: readonly Kind[] = Object.entries(HOSTILE_STRUCTURES).map(([kind, structure]) => [
  kind,
  () => zipped(partsOf(structure())),
]);
