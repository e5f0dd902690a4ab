import { describe, expect, it } from 'vitest';
import { readFormula } from '../../taskpane/formula/readFormula.js';
import { asReference, referencesIn } from '../../taskpane/formula/references.js';
import { Unknown } from '../../taskpane/formula/unknown.js';

const argumentOf = (text: string) => readFormula(`=POWDER.DRYMASS(${text},0)`).calls[0]?.node.arguments[0] ?? null;
const reference = (text: string) => asReference(argumentOf(text), 'Here');
const range = (top: number, left: number, bottom: number | null, right: number | null, sheet = 'Here') => ({
  ...{ kind: 'range', sheet, top, left, bottom, right },
});

describe('a reference in a formula', () => {
  it('is a cell or a rectangle of the formula’s own sheet, absolute or not', () => {
    expect(reference('B3')).toEqual(range(2, 1, 2, 1));
    expect(reference('$B$3:C$9')).toEqual(range(2, 1, 8, 2));
    expect(reference('C9:B3')).toEqual(range(2, 1, 8, 2));
  });

  it('is on another sheet where it names one, with or without quotation marks', () => {
    expect(reference('Trials!A1')).toEqual(range(0, 0, 0, 0, 'Trials'));
    expect(reference("'Mike''s trials'!$A$1:A4")).toEqual(range(0, 0, 3, 0, "Mike's trials"));
    expect(reference("Trials!A1:'Trials'!B2")).toEqual(range(0, 0, 1, 1, 'Trials'));
  });

  it('reaches as far as the sheet does where it names whole columns or rows', () => {
    expect(reference('B:C')).toEqual(range(0, 1, null, 2));
    expect(reference('A1:A1048576')).toEqual(range(0, 0, null, 0));
    expect(reference('2:3')).toEqual(range(1, 0, 2, null));
  });

  it('is all that a formula fills', () => {
    expect(reference('A2#')).toEqual({ kind: 'spill', sheet: 'Here', row: 1, column: 0 });
    expect(reference('Trials!$A$2#')).toEqual({ kind: 'spill', sheet: 'Trials', row: 1, column: 0 });
  });

  it('is a name, of the sheet that stands before it or else of its own', () => {
    expect(reference('bodyFeed')).toEqual({ kind: 'name', sheet: 'Here', name: 'bodyFeed' });
    expect(reference('Trials!bodyFeed')).toEqual({ kind: 'name', sheet: 'Trials', name: 'bodyFeed' });
  });

  it('is a table, or one column of it', () => {
    expect(reference('Log[Bar]')).toEqual({ kind: 'table', table: 'Log', column: 'Bar' });
    expect(reference('Log[]')).toEqual({ kind: 'table', table: 'Log' });
  });

  it.each(["'[other.xlsx]Trials'!A1", 'Log[#Totals]', 'Log[@Bar]', 'Log[[Bar]:[Hour]]', 'A1:INDEX(B:B,3)', 'A1.:.A9'])(
    'is the workbook’s own business where it is %s',
    (text) => {
      expect(reference(text)).toBeInstanceOf(Unknown);
    },
  );

  it('is no other part of a formula', () => {
    for (const text of ['1', '"a"', 'A1+1', 'SUM(A1)']) expect(reference(text)).toBeUndefined();
  });
});

describe('the references of an argument', () => {
  it('are found in arithmetic, arrays and nested calls', () => {
    const found = referencesIn(argumentOf('-A1*(B2%+POWDER.DRYMASS(C3,dose))'), 'Here');
    expect(found.map((one) => ('name' in one ? one.name : one.kind))).toEqual(['range', 'range', 'range', 'dose']);
  });
});
