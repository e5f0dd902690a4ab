import type { Validation } from '../../../src/sheets/sheet.js';

/** The most that Excel takes in an alert or a prompt. */
const MOST_LETTERS = 255;

const cut = (text: string): string => (text.length > MOST_LETTERS ? `${text.slice(0, MOST_LETTERS - 1)}…` : text);

const ruleOf = ({ kind, limit, of }: Validation): Excel.DataValidationRule | undefined => {
  if (kind === 'list') return of && { list: { inCellDropDown: true, source: of.join(',') } };
  return limit && { decimal: { formula1: limit[0], formula2: limit[1], operator: 'Between' } };
};

/** Queues what cells may hold, the sentence for what it may not, and the explanation shown when it is selected. */
export function validate(
  { dataValidation }: Excel.Range | Excel.RangeAreas,
  validation: Validation,
  note: string | undefined,
): void {
  const rule = ruleOf(validation);
  if (!rule) return;
  dataValidation.rule = rule;
  dataValidation.errorAlert = {
    showAlert: true,
    // Asks before it takes the entry: what a person typed is flagged, never lost.
    style: 'Warning',
    title: 'Powderbook',
    message: cut(validation.message),
  };
  if (note) dataValidation.prompt = { showPrompt: true, title: '', message: cut(note) };
}
