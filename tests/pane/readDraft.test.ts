import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue.js';
import type { Calculation } from '../../src/core/calculation.js';
import { exampleDraft } from '../../taskpane/pane/form/draft.js';
import { readDraft } from '../../taskpane/pane/form/readDraft.js';
import { settingFor } from '../../taskpane/pane/setting.js';
import { en } from '../../taskpane/texts/en.js';

const read = (id: string, changes: Record<string, string>, locale = 'en-GB') => {
  const calculation = catalogue.find((one) => one.id === id) as Calculation;
  const { formats, writing } = settingFor(en, locale, 'embedded');
  return readDraft(calculation, { ...exampleDraft(calculation, formats), ...changes }, writing);
};

describe('a form', () => {
  it('reads a share written as a percentage or as a fraction', () => {
    expect(read('DRYMASS', { moisture: '65 %' }).handed.moisture).toBe(0.65);
    expect(read('DRYMASS', { moisture: '0.65' }).handed.moisture).toBe(0.65);
    expect(read('DRYMASS', { moisture: '0,65' }, 'de-DE').handed.moisture).toBe(0.65);
  });

  it('refuses 65 for a share, and says how to write 65 percent', () => {
    expect(read('DRYMASS', { moisture: '65' }).problems.moisture).toMatch(/write 65 % or 0\.65/);
  });

  it('never takes 1.200 for 1.2 where the point groups digits', () => {
    expect(read('DRYMASS', { mass: '1.200' }, 'de-DE').handed.mass).toBe(1200);
    expect(read('DRYMASS', { mass: '1.2' }, 'de-DE').problems.mass).toMatch(/decimal mark/);
  });

  it('asks for an input that was left blank, and takes the preset where there is one', () => {
    expect(read('DRYMASS', { mass: ' ' }).problems.mass).toMatch(/nothing was given/);
    const swap = read('SWAPDOSE', { position: '' });
    expect([swap.problems, swap.handed.position]).toEqual([{}, 0.5]);
  });

  it('says why a word does not fit', () => {
    expect(read('SWAPDOSE', { fromKind: 'pvpp' }).problems.fromKind).toMatch(/removes polyphenol/);
  });

  it('names the row of a series that is refused', () => {
    expect(read('LADDERFIT', { doses: '0\n20\nforty\n60' }).problems.doses).toMatch(
      /row 3, is text, not a number: "forty"/,
    );
  });

  it('marks the field of the plan label that is refused', () => {
    const { problems } = read('RUNLENGTH', { 'labels/values/flow': '-1' });
    expect(Object.keys(problems)).toEqual(['labels/values/flow']);
    expect(problems['labels/values/flow']).toMatch(/^Beer flow must be/);
  });
});
