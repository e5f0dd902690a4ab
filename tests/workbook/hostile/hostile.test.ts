import { describe, expect, it } from 'vitest';
import { parseXml } from '../../../taskpane/workbook/xlsx/leanXml.js';
import { LIMITS } from '../../../taskpane/workbook/xlsx/limits.js';
import { readBook } from '../../../taskpane/workbook/xlsx/readBook.js';
import { words } from '../xlsx/handMade.js';
import { HOSTILE_FORMULA_FILES, HOSTILE_STRUCTURE_FILES } from './kinds.js';

const KINDS = [...HOSTILE_FORMULA_FILES, ...HOSTILE_STRUCTURE_FILES];

describe('hostile files', () => {
  it('are of at least 82 kinds, each with a name of its own', () => {
    expect(new Set(KINDS.map(([kind]) => kind)).size).toBe(KINDS.length);
    expect(KINDS.length).toBeGreaterThanOrEqual(82);
  });

  it.each(KINDS)('with %s are read or refused with a sentence, within the limits', (_, bytes) => {
    const answer = readBook(bytes(), parseXml, words);
    if ('refusal' in answer) return expect(answer.refusal).toMatch(/\.$/);
    const { sheets } = answer.book;
    const conditions = sheets.flatMap(({ conditions: own }) => own ?? []);
    const cells = sheets.flatMap(({ rows }) => rows).reduce((sum, row) => sum + (row?.filter(Boolean).length ?? 0), 0);
    expect(cells).toBeLessThanOrEqual(LIMITS.cells + LIMITS.ruled);
    expect(conditions.length).toBeLessThanOrEqual(LIMITS.rules * sheets.length);
  });
});
