import { en } from '../../taskpane/texts/en.js';
import { LIMITS } from '../../taskpane/workbook/xlsx/limits.js';
import { type Difference, inWords, type Judged, type Notice } from '../../tests/exchange/compare.js';
import { KINDS } from '../../tests/exchange/facts/fact.js';
import { table } from '../scripts/table.js';
import type { Compared } from './compared.js';

const phrase = (notice: Notice): string => {
  const words = en.open.parts[notice];
  return typeof words === 'string' ? words : words(LIMITS.rows, LIMITS.columns);
};

/** Answers that LibreOffice calculates otherwise, but for cells whose last value took the place of the formula, as told. */
function otherwiseThanTold({ differences, otherwise }: Compared): readonly Difference[] {
  const told = new Set(
    differences.flatMap(({ kind, where, told }) => (kind === 'formula' && told.length > 0 ? [where] : [])),
  );
  return otherwise.filter(({ where }) => !told.has(where));
}

const silentOf = (list: readonly Judged[]) => list.filter(({ told }) => told.length === 0);
const count = (list: readonly unknown[]) => (list.length === 0 ? 'none' : String(list.length));

/** One line for each kind of difference of a workbook that a notice names. */
function toldRows({ name, differences }: Compared): string[][] {
  return KINDS.flatMap((kind) => {
    const found = differences.filter((one) => one.kind === kind && one.told.length > 0);
    const [first] = found;
    if (!first) return [];
    const notices = [...new Set(found.flatMap(({ told }) => told))].map(phrase).join('; ');
    return [[name, kind, String(found.length), inWords(first).slice(0, 160), notices]];
  });
}

export function workbooksPage(all: readonly Compared[]): { section: string; failures: readonly string[] } {
  const rows = all.map(({ name, maker, facts, differences, openpyxl, second, calculated, otherwise }) => [
    name,
    maker,
    facts.toLocaleString('en-GB'),
    count(differences.filter(({ told }) => told.length > 0)),
    count(silentOf(differences)),
    count(silentOf(openpyxl)),
    count(second),
    `${(calculated - otherwise.length).toLocaleString('en-GB')} of ${calculated.toLocaleString('en-GB')}`,
  ]);
  const failures = all.flatMap((one) => {
    const { name, differences, openpyxl, second } = one;
    return Object.entries({
      'read from its parts': silentOf(differences),
      'read by openpyxl': silentOf(openpyxl),
      'saved a second time': second,
      'calculated in LibreOffice': otherwiseThanTold(one),
    }).flatMap(([how, list]) => list.map((found) => `${name}, ${how}: ${inWords(found)}`));
  });
  const section = `## Workbooks

Each workbook is opened as the page opens it, calculated in the grid, saved, opened and saved again. A difference is
**told** where the notice of opening names it, and **silent** where it does not. Both files are read from their raw parts,
and once more by openpyxl; LibreOffice calculates both anew, and its answers are compared.

${table(['workbook', 'made', 'facts', 'told', 'silent', 'silent to openpyxl', 'changed by a second saving', 'same in LibreOffice'], rows)}

### What the notice names

${table(['workbook', 'kind', 'differences', 'the first of them', 'the notice'], all.flatMap(toldRows))}`;
  return { section, failures };
}
