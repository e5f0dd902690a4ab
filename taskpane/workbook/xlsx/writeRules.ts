import type { Validation } from '../../../src/sheets/sheet.js';
import { a1 } from '../../host/a1.js';
import type { BookCell, BookSheet } from './book.js';
import type { Attributes } from './pageSetup.js';
import { formulaInFile } from './writeFormula.js';
import { judgedId } from './writeStyles.js';
import { element, escaped } from './writeXml.js';

/** What Excel shows of a title and of a text at most. */
const MOST = 255;

interface Shared {
  readonly cell: BookCell;
  readonly places: string[];
}

/** An attribute of the file is escaped anyway, but for what looks like the code of a character. */
const inRule = (text: string | undefined) => text?.slice(0, MOST).replace(/_(?=x[0-9A-F]{4}_)/gi, '_x005F_');

/** Cells with the same rule and the same note share one entry. */
function ruled({ rows }: BookSheet): readonly Shared[] {
  const found = new Map<string, Shared>();
  for (const [r, row] of rows.entries()) {
    for (const [c, cell] of (row ?? []).entries()) {
      if (!cell?.validation && !cell?.note) continue;
      const key = JSON.stringify([cell.validation, cell.rule, cell.note]);
      const one = found.get(key) ?? { cell, places: [] };
      one.places.push(a1(r, c));
      found.set(key, one);
    }
  }
  return [...found.values()];
}

/** A rule of our own warns, and takes what is entered; one from a file does as it did there. */
const ownWay = (rule: Validation | undefined): Attributes => ({
  errorStyle: 'warning',
  allowBlank: '1',
  ...(rule ? { showErrorMessage: '1', error: rule.message } : {}),
});

/** The numbers between which an entry may be, as one comparison where there is only one. */
function comparison(least: number, most: number): readonly [operator: string, ...ends: number[]] {
  if (least === most) return ['equal', least];
  if (most === Number.MAX_VALUE) return ['greaterThanOrEqual', least];
  if (least === -Number.MAX_VALUE) return ['lessThanOrEqual', most];
  return ['between', least, most];
}

function validation({ cell: { validation: rule, rule: besides, note }, places }: Shared): string {
  const said = {
    ...Object.fromEntries(Object.entries(besides ?? ownWay(rule)).map(([name, text]) => [name, inRule(text)])),
    showInputMessage: note ? 1 : undefined,
    prompt: inRule(note),
    sqref: places.join(' '),
  };
  if (rule?.kind === 'list' && rule.of)
    return element(
      'dataValidation',
      { type: 'list', ...said },
      element('formula1', {}, `&quot;${escaped(rule.of.join(','))}&quot;`),
    );
  const [least, most] = rule?.limit ?? [];
  if (least === undefined || most === undefined) return element('dataValidation', said);
  const [operator, ...ends] = comparison(least, most);
  const limits = ends.map((one, place) => element(`formula${place + 1}`, {}, String(one)));
  return element('dataValidation', { type: 'decimal', operator, ...said }, ...limits);
}

/** Conditional formats, then rules for entries, in the order that a sheet's part asks for. */
export function rulesOf(sheet: BookSheet): readonly string[] {
  const formats = (sheet.conditions ?? []).map(({ range, formula, look }, index) =>
    element(
      'conditionalFormatting',
      { sqref: range },
      element(
        'cfRule',
        { type: 'expression', dxfId: judgedId(look), priority: index + 1, stopIfTrue: 1 },
        element('formula', {}, escaped(formulaInFile(formula))),
      ),
    ),
  );
  const rules = ruled(sheet).map(validation);
  return [...formats, ...(rules.length > 0 ? [element('dataValidations', { count: rules.length }, ...rules)] : [])];
}
