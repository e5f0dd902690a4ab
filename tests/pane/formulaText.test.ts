import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue.js';
import type { Calculation } from '../../src/core/calculation.js';
import { formulaText } from '../../taskpane/pane/card/formulaText.js';
import { layOut } from '../../taskpane/pane/form/block.js';
import { exampleDraft } from '../../taskpane/pane/form/draft.js';
import { readDraft } from '../../taskpane/pane/form/readDraft.js';
import { settingFor } from '../../taskpane/pane/setting.js';
import { en } from '../../taskpane/texts/en.js';

const typed = (id: string, locale = 'en-GB', changes = {}) => {
  const calculation = catalogue.find((one) => one.id === id) as Calculation;
  const { formats, writing } = settingFor(en, locale, 'embedded');
  const { handed } = readDraft(calculation, { ...exampleDraft(calculation, formats), ...changes }, writing);
  return formulaText(calculation, handed, layOut(calculation, handed), formats.notation);
};

describe('the formula as a person would type it', () => {
  it('leaves a preset at the end unsaid, and writes any other value', () => {
    expect(typed('SWAPDOSE')).toBe('=POWDER.SWAPDOSE(60,"hydrogel","adsorptive")');
    expect(typed('SWAPDOSE', 'en-GB', { position: '1' })).toBe('=POWDER.SWAPDOSE(60,"hydrogel","adsorptive",1)');
  });

  it('follows the country’s decimal mark and separator', () => {
    expect(typed('DRYMASS', 'de-DE')).toBe('=POWDER.DRYMASS(1000;0,65)');
  });

  it('writes a short series as a column of constants', () => {
    expect(typed('LADDERFIT')).toBe('=POWDER.LADDERFIT({0;20;40;60},{9;5;3;2})');
  });

  it('refers to ranges where the values are too many to be read on a line', () => {
    expect(typed('RUNLENGTH', 'de-DE')).toMatch(/^=POWDER\.RUNLENGTH\(A4:A\d+;B4:B\d+\)$/);
  });

  it('doubles the quotation marks inside a text', () => {
    expect(typed('SAFERANGE', 'en-GB', { input: 'a "b"' })).toBe('=POWDER.SAFERANGE("BODYFEED","a ""b""")');
  });
});
