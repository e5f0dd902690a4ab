import { a1 } from '../../host/a1.js';
import type { BookCell, BookSheet } from './book.js';
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
      const key = JSON.stringify([cell.validation, cell.note]);
      const one = found.get(key) ?? { cell, places: [] };
      one.places.push(a1(r, c));
      found.set(key, one);
    }
  }
  return [...found.values()];
}

function validation({ cell: { validation: rule, note }, places }: Shared): string {
  const said = {
    errorStyle: 'warning',
    allowBlank: 1,
    showInputMessage: note ? 1 : undefined,
    showErrorMessage: rule ? 1 : undefined,
    error: inRule(rule?.message),
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
  const ends = [element('formula1', {}, String(least)), element('formula2', {}, String(most))];
  return element('dataValidation', { type: 'decimal', operator: 'between', ...said }, ...ends);
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
