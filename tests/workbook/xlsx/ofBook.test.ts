import { describe, expect, it } from 'vitest';
import { gridOfBook } from '../../../taskpane/workbook/grid/ofBook.js';
import { calculateWorkbook } from '../headless.js';
import { opened, rows } from './handMade.js';

const calculate = (...given: Parameters<typeof opened>) => calculateWorkbook(gridOfBook(opened(...given).book));

describe('a workbook from a file, in the grid', () => {
  it('calculates the add-in’s functions, names and answers of several cells anew', async () => {
    const sheet = await calculate({
      sheets: [
        rows(
          '<c r="A1"><v>100</v></c><c r="B1"><f>_xldudf_POWDER_DRYMASS(mass,0.25)</f><v>1</v></c>',
          '<c r="A2"><v>200</v></c><c r="B2"><f>A2*factor</f><v>1</v></c>',
          '<c r="A3"><f t="array" ref="A3:A4">A1:A2*2</f><v>1</v></c>',
          '<c r="A4"><v>1</v></c><c r="B4"><f>B1+1</f></c>',
        ),
      ],
      names: ["Year's"],
      after: `<definedNames><definedName name="mass">'Year''s'!$A$1</definedName>
        <definedName name="factor">0.5</definedName></definedNames>`,
    });
    const values = ['B1', 'B2', 'A3', 'A4', 'B4'].map((place) => sheet.at(place).value);
    sheet.dispose();
    expect(values).toEqual([75, 100, 200, 400, 76]);
  });

  it('keeps text that looks like a formula as text', async () => {
    const texts = ['=1+1', '+1', '-1', '@SUM(1)', '<b>1</b>'];
    const sheet = await calculate({
      sheets: [rows(...texts.map((text) => `<c t="inlineStr"><is><t>${text.replaceAll('<', '&lt;')}</t></is></c>`))],
    });
    const shown = texts.map((_, row) => sheet.at(`A${row + 1}`));
    sheet.dispose();
    expect(shown.map(({ value }) => value)).toEqual(texts);
    expect(shown.filter(({ formula }) => formula !== undefined)).toEqual([]);
  });

  it('comes to an end where formulas go round in a circle', async () => {
    const sheet = await calculate({
      sheets: [rows('<c r="A1"><f>B1</f><v>1</v></c><c r="B1"><f>A1</f><v>1</v></c><c r="C1"><f>1+1</f></c>')],
    });
    const { value } = sheet.at('C1');
    sheet.dispose();
    expect(value).toBe(2);
  });

  it('has room for the widest and longest sheet, and the grid’s own size at least', () => {
    const far = '<row r="9000"><c r="CZ9000"><v>1</v></c></row>';
    const data = gridOfBook(opened({ sheets: [`<sheetData>${far}</sheetData>`, rows()] }).book);
    expect(Object.values(data.sheets).map(({ rowCount, columnCount }) => [rowCount, columnCount])).toEqual([
      [9000, 104],
      [5000, 52],
    ]);
  });
});
