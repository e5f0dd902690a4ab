import type { SheetCell, StarterSheet } from '../../../src/sheets/sheet.js';
import { rangeText } from '../../host/address.js';
import type { Setting } from '../setting.js';
import type { Finding } from './finding.js';
import { sayFinding } from './sayFinding.js';

/** The list as a sheet: one finding in each row, its place in words, so that it can be printed or worked off. */
export function listSheet(findings: readonly Finding[], setting: Setting): StarterSheet {
  const { list, kinds } = setting.texts.check;
  const heading = (text: string): SheetCell => ({ text, style: 'heading' });
  const rows = findings.map((one): SheetCell[] => [
    { text: kinds[one.kind], style: 'label' },
    { text: one.place.sheet, style: 'label' },
    { text: rangeText(one.place), style: 'label' },
    { text: one.subject, style: 'label' },
    { text: sayFinding(one, setting).text },
  ]);
  const headings = [list.kind, list.sheet, list.cell, list.subject, list.sentence].map(heading);
  return {
    key: 'check',
    name: list.name,
    summary: list.summary,
    widths: [30, 18, 8, 36, 100],
    rows: [[{ text: list.title, style: 'title' }], headings, ...rows],
    names: {},
    headerRows: 2,
  };
}
