import { describe, expect, it } from 'vitest';
import { en } from '../../taskpane/texts/en.js';
import { notationOfBlock } from '../../taskpane/workbook/entry/blockMark.js';
import { notationOf } from '../../taskpane/workbook/entry/notation.js';
import { readNumber } from '../../taskpane/workbook/entry/number.js';

const [english, german] = [notationOf('en-GB'), notationOf('de-DE')];
function values(texts: readonly string[], own = english) {
  const { notation } = notationOfBlock(texts, own);
  return texts.map((text) => {
    const entry = readNumber(text, { notation, words: en.entry });
    return entry.kind === 'number' ? entry.value : entry.kind;
  });
}

describe('the decimal mark of a pasted block', () => {
  it.each([
    [
      ['0,333', '12,5'],
      [0.333, 12.5],
    ],
    [
      ['1,234', '12,5'],
      [1.234, 12.5],
    ],
    [
      ['1.234', '12,5'],
      [1234, 12.5],
    ],
    [
      ['1.234,5', '1,234'],
      [1234.5, 1.234],
    ],
    [
      ['1.234.567', '1,234'],
      [1234567, 1.234],
    ],
    [
      ['1,234', '0,333', 'kg', '5-10'],
      [1.234, 0.333, 'text', 'text'],
    ],
    [
      ['1 234,5', '65 %', '7'],
      [1234.5, 0.65, 7],
    ],
    [
      ['1,234', '1,234.5'],
      [1234, 1234.5],
    ],
  ])('is what its cells show, whatever the language has: %j', (texts, read) => {
    expect(values(texts)).toEqual(read);
  });

  it('is a point where the cells show it and the language has a comma', () => {
    expect(values(['1.234', '0.5', '1,000.25'], german)).toEqual([1.234, 0.5, 1000.25]);
  });

  it('is the language’s own where cells show nothing or contradict each other, and an open number is named', () => {
    expect(values(['1,234'])).toEqual([1234]);
    expect(values(['1,234'], german)).toEqual([1.234]);
    expect(values(['12,5', '0.5'])).toEqual(['refused', 0.5]);
    expect(notationOfBlock(['kg', '1,234'], english)).toEqual({ notation: english, open: '1,234' });
    expect(notationOfBlock(['0.5', '1,234'], english)).toEqual({ notation: english });
    expect(notationOfBlock(['5.10.2026', '1.2.3', '7', '5.'], german)).toEqual({ notation: german });
    expect(notationOfBlock(['7', '12,5'], english)).toMatchObject({ shownBy: '12,5' });
  });

  it('has no group after a nought: 0,333 alone is a third', () => {
    expect(values(['0,333'])).toEqual([0.333]);
    expect(readNumber('0,333', { notation: english, words: en.entry })).toMatchObject({ kind: 'refused' });
  });
});
