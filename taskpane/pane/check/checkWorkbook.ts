import type { WorkbookContents } from '../../host/workbookContents.js';
import type { Writing } from '../../workbook/entry/writing.js';
import { FormulaCheck } from './checkFormula.js';
import { type Checked, KINDS } from './finding.js';
import { Snapshot } from './snapshot.js';
import { Suspicions } from './suspicions.js';
import { textNumbers } from './textNumbers.js';

/** How long the page may stand still while formulas are checked, in ms. */
const AT_ONCE = 40;

export interface CheckOptions {
  readonly scope: 'sheet' | 'workbook';
  /** How the user writes numbers: texts that look like numbers are looked for where it is given. */
  readonly writing?: Writing;
  readonly onProgress?: (share: number) => void;
  readonly signal?: AbortSignal;
}

const pause = (): Promise<void> => new Promise((go) => setTimeout(go));

/** Checks every formula with one of our functions, letting the page breathe in between. */
export async function checkWorkbook(
  contents: WorkbookContents,
  { scope, writing, onProgress, signal }: CheckOptions,
): Promise<Checked> {
  const snapshot = new Snapshot(contents);
  const suspicions = new Suspicions(snapshot);
  const check = new FormulaCheck(snapshot, suspicions.receive);
  const sheets = contents.sheets.filter(({ name }) => scope === 'workbook' || name === contents.active);
  const all = sheets.reduce((sum, { formulas }) => sum + formulas.length, 0);
  let rows = 0;
  let since = performance.now();
  // First what the sheets themselves say of a cell: it is not told twice.
  for (const { name, values } of sheets)
    for (const line of values) for (const shown of line) check.judgement(name, shown);
  for (const { name, row, column, formulas, values } of sheets) {
    for (const [down, line] of formulas.entries()) {
      for (const [across, text] of line.entries()) {
        if (typeof text !== 'string' || !text.startsWith('=')) continue;
        check.check(name, row + down, column + across, text, values[down]?.[across] ?? null);
      }
      rows++;
      if (performance.now() - since < AT_ONCE) continue;
      onProgress?.(rows / all);
      await pause();
      signal?.throwIfAborted();
      since = performance.now();
    }
  }
  const texts = writing ? sheets.flatMap((sheet) => textNumbers(sheet, writing)) : [];
  const findings = [...check.findings, ...texts, ...suspicions.findings()];
  findings.sort((one, other) => KINDS.indexOf(one.kind) - KINDS.indexOf(other.kind));
  return { findings, formulas: check.formulas };
}
