import { expect, it } from 'vitest';
import { fileName } from '../../taskpane/workbook/shell/fileName.js';

it.each([
  ['Powderbook Dosing', 'Powderbook Dosing 2026-11-07.xlsx'],
  ['Year <plan> "2027" | a\n', 'Year plan 2027 a 2026-11-07.xlsx'],
  ['x'.repeat(300), `${'x'.repeat(120)} 2026-11-07.xlsx`],
])('a saved file has a name that every disk takes, and its day: %s', (content, name) => {
  expect(fileName(content, new Date(2026, 10, 7))).toBe(name);
});
