import type { SheetCondition } from '../../../src/sheets/sheet.js';
import { JUDGED_LOOKS } from '../judgedLooks.js';

/** Queues the conditional formats of a sheet. */
export function setConditions(sheet: Excel.Worksheet, conditions: readonly SheetCondition[]): void {
  for (const { range, formula, look } of conditions) {
    const { custom } = sheet.getRange(range).conditionalFormats.add('Custom');
    const { color, fill, bold, italic } = JUDGED_LOOKS[look];
    custom.rule.formula = formula;
    custom.format.font.color = color;
    if (bold) custom.format.font.bold = true;
    if (italic) custom.format.font.italic = true;
    custom.format.fill.color = fill;
  }
}
