import { describe, expect, it } from 'vitest';
import { cellsOf, opened, rows, words } from './handMade.js';

const cell = (inside: string, attributes = '') => `<c r="A1" ${attributes}>${inside}</c>`;
const first = (inside: string, attributes = '', texts = '') =>
  cellsOf({ sheets: [rows(cell(inside, attributes))], texts })[0]?.[0];

describe('the value of a cell in a file', () => {
  it('is a number, a logical value or an error', () => {
    expect(first('<v>1.5E-3</v>')).toEqual({ value: 0.0015 });
    expect(first('<v>1</v>', 't="b"')).toEqual({ value: true });
    expect(first('<v>#N/A</v>', 't="e"')).toEqual({ error: '#N/A' });
  });

  it('is a shared text, also one with looks or a reading beside it', () => {
    const texts = '<si><t>Dose</t></si><si><r><rPr><b/></rPr><t>g</t></r><r><t>/hL</t></r><rPh><t>no</t></rPh></si>';
    expect(first('<v>0</v>', 't="s"', texts)).toEqual({ value: 'Dose' });
    expect(first('<v>1</v>', 't="s"', texts)).toEqual({ value: 'g/hL' });
    expect(first('<v>2</v>', 't="s"', texts)).toBeUndefined();
  });

  it('is a text that stands in the cell itself, with its escaped letters', () => {
    expect(first('<is><t>a_x000A_b &lt;b&gt;</t></is>', 't="inlineStr"')).toEqual({ value: 'a\nb <b>' });
  });

  it('is a text where it looks like a formula', () => {
    expect(first('<is><t>=1+1</t></is>', 't="inlineStr"')).toEqual({ value: '=1+1' });
  });

  it('is a day counted as the grid counts, where the file writes the day out', () => {
    expect(first('<v>2026-11-25T12:00:00</v>', 't="d"')).toEqual({ value: 46351.5 });
  });

  it('is nothing where the number is none', () => {
    expect(first('<v>1,5</v>')).toBeUndefined();
    expect(first('<v>Infinity</v>')).toBeUndefined();
  });
});

describe('a formula in a file', () => {
  const formula = (text: string) => first(`<f>${text}</f><v>1</v>`)?.formula;

  it('names the add-in’s functions as one types them', () => {
    expect(formula('_xldudf_POWDER_DRYMASS(A2,B2)')).toBe('=POWDER.DRYMASS(A2,B2)');
  });

  it('loses the marks of younger functions, but not those inside a text', () => {
    expect(formula('SUM(_xlfn._xlws.SORT(_xlfn.LET(_xlpm.a,1,_xlpm.a)))&amp;"_xlfn."')).toBe(
      '=SUM(SORT(LET(a,1,a)))&"_xlfn."',
    );
  });

  it('keeps its last value beside it', () => {
    expect(first('<f>1+1</f><v>2</v>')).toEqual({ formula: '=1+1', value: 2 });
  });

  it('gives way to its value where it reads another workbook', () => {
    const { book, leftOut } = opened({ sheets: [rows(cell("<f>'[1]Old plan'!A1*2</f><v>7</v>"))] });
    expect(book.sheets[0]?.rows[0]?.[0]).toEqual({ value: 7 });
    expect(leftOut).toEqual([words.parts.external]);
  });

  it.each([
    ['operators without end', '-'.repeat(8000).concat('1')],
    ['calls without end', `${'ABS('.repeat(500)}1${')'.repeat(500)}`],
    ['a range of billions of places', 'SUM(B1:XFD1048576)'],
    ['columns without end', 'SUM(Plan!B:XFD)'],
    ['a name explained by itself', '_xlfn.LET(_xlpm.a,_xlpm.a,1)'],
    ['two names explained by each other', '_xlfn.LET(_xlpm.a,_xlpm.b,_xlpm.b,_xlpm.a,1)'],
    ['a function of its own', '_xlfn.LAMBDA(_xlpm.x,_xlpm.x(_xlpm.x))(1)'],
    ['more letters than a formula may have', `1${' '.repeat(8200)}`.concat('+1')],
  ])('gives way to its value where it has %s', (_, text) => {
    const { book, leftOut } = opened({ sheets: [rows(cell(`<f>${text}</f><v>7</v>`))] });
    const { kept, ...found } = book.sheets[0]?.rows[0]?.[0] ?? {};
    expect(found).toEqual({ value: 7 });
    expect([text, undefined]).toContain(kept);
    expect(leftOut).toEqual([words.parts.heavyFormulas]);
  });

  it('stays where names are explained by earlier ones, and where it reads whole columns', () => {
    expect(formula('_xlfn.LET(_xlpm.a,1,_xlpm.b,_xlpm.a+1,_xlpm.b)')).toBe('=LET(a,1,b,a+1,b)');
    expect(formula('SUM(B:C)+SUM(D1:D1048576)')).toBe('=SUM(B:C)+SUM(D1:D1048576)');
  });

  it('that several cells share is read by each from where it stands', () => {
    const found = cellsOf({
      sheets: [
        rows(
          '<c r="B1"><f t="shared" ref="B1:B3" si="0">A1*$A$1+"A1"</f></c>',
          '<c r="B2"><f t="shared" si="0"/></c>',
          '<c r="B3"><f t="shared" si="0"/><v>4</v></c>',
        ),
      ],
    });
    expect(found.map((row) => row?.[1]?.formula)).toEqual(['=A1*$A$1+"A1"', '=A2*$A$1+"A1"', '=A3*$A$1+"A1"']);
  });

  it('that fills several cells is one formula, and the cells it fills are free', () => {
    const found = cellsOf({
      sheets: [
        rows(
          '<c r="A1"><f t="array" ref="A1:B2">A5:B6*2</f><v>1</v></c><c r="B1"><v>2</v></c><c r="C1"><v>9</v></c>',
          '<c r="A2"><v>3</v></c><c r="B2"><v>4</v></c>',
          '<c r="A3"><v>5</v></c>',
        ),
      ],
    });
    expect(found[0]?.[0]).toEqual({ formula: '=A5:B6*2', spill: 'A1:B2', fixed: { rows: 2, columns: 2 }, value: 1 });
    expect([found[0]?.[1], found[1]?.[0], found[1]?.[1]]).toEqual([undefined, undefined, undefined]);
    expect([found[0]?.[2], found[2]?.[0]]).toEqual([{ value: 9 }, { value: 5 }]);
  });
});
