import { describe, expect, it } from 'vitest';
import { cellsOfText } from '../../taskpane/workbook/grid/pastedText.js';

describe('pasted text', () => {
  it('is split into rows and columns, empty cells included', () => {
    expect(cellsOfText('1\t\t2\r\n\t3\r\n')).toEqual([
      ['1', '', '2'],
      ['', '3'],
    ]);
  });

  it('keeps tabs, line breaks and quotes of a quoted cell', () => {
    expect(cellsOfText('"a\tb\n""c"""\td')).toEqual([['a\tb\n"c"', 'd']]);
  });

  it('of one cell is one cell', () => {
    expect(cellsOfText('0,65')).toEqual([['0,65']]);
  });
});
