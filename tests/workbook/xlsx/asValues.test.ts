import { describe, expect, it } from 'vitest';
import { asValues, sheetAsValues } from '../../../taskpane/workbook/xlsx/asValues.js';
import type { Book, BookCell } from '../../../taskpane/workbook/xlsx/book.js';

const sheet = (name: string, row: readonly BookCell[]) => ({
  name,
  rows: [row],
  widths: [],
  names: { dose: 'A1' },
  headerRows: 0,
});
const book: Book = {
  sheets: [
    sheet('Plan', [
      { value: 35, formula: '=POWDER.DRYMASS(A2:A3,0.5)', spill: 'A1:B1', format: '0.0' },
      { value: 36 },
      { value: 70, formula: '=A1*2' },
      { value: 71, formula: '=SUM(A1#)' },
      { error: '#VALUE!', formula: '=1+POWDER.DRYMASS("x",1)' },
      { value: 'POWDER.DRYMASS(', formula: '="POWDER.DRYMASS("' },
      { value: 7, formula: "='Other sheet'!A1" },
      { value: 35, formula: '=dose+0' },
      { value: 5, formula: '=elsewhere' },
      { value: 70, formula: '=Plan!A1*2' },
    ]),
    sheet('Other sheet', [{ value: 7, formula: '=3+4' }]),
  ],
  active: 'Plan',
};
const formulas = (from: Book) => from.sheets[0]?.rows[0]?.map((cell) => cell?.formula);

describe('a workbook with values in place of our formulas', () => {
  it('has their answers, spilled ones too, and keeps all other formulas', () => {
    const values = asValues(book);
    expect(values.sheets[0]?.rows[0]?.[0]).toEqual({ value: 35, format: '0.0' });
    expect(values.sheets[0]?.rows[0]?.[1]).toEqual({ value: 36 });
    expect(values.sheets[0]?.rows[0]?.[4]).toEqual({ error: '#VALUE!' });
    const [, , double, , , text, other, ...rest] = formulas(book) ?? [];
    expect(formulas(values)).toEqual([undefined, undefined, double, undefined, undefined, text, other, ...rest]);
    expect(formulas(book)?.[0]).toBeDefined();
  });

  it('has no names that stand for our functions, and values where such a name is read', () => {
    const named: Book = {
      ...book,
      sheets: [
        sheet('Plan', [
          { value: 2, formula: '=twice*1' },
          { value: 3, formula: '=share+dose' },
        ]),
      ],
      values: { solids: '=POWDER.DRYMASS(Plan!$A$2,0.5)', twice: '=Solids*2', share: '=0.25' },
      keptNames: [
        { name: 'other', text: '_xldudf_POWDER_DRYMASS(1,2)' },
        { name: 'stays', text: 'OFFSET(Plan!$A$1,0,0)' },
      ],
    };
    const values = asValues(named);
    expect(values.values).toEqual({ share: '=0.25' });
    expect(values.keptNames?.map(({ name }) => name)).toEqual(['stays']);
    expect(formulas(values)).toEqual([undefined, '=share+dose']);
    expect(values.sheets[0]?.rows[0]?.[0]).toEqual({ value: 2 });
  });

  it('can be one sheet alone, where what reads another sheet or a name that is not there is a value, too', () => {
    const alone = sheetAsValues(book, 'Plan');
    expect(alone.sheets.map(({ name }) => name)).toEqual(['Plan']);
    expect(formulas(alone)?.slice(5)).toEqual(['="POWDER.DRYMASS("', undefined, '=dose+0', undefined, '=Plan!A1*2']);
    expect(alone.sheets[0]?.rows[0]?.[6]).toEqual({ value: 7 });
  });
});
