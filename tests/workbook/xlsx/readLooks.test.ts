import { describe, expect, it } from 'vitest';
import { cellsOf, opened, rows, words } from './handMade.js';

const theme = `<theme><themeElements><clrScheme>${['000000', 'FFFFFF', '44546A', 'E7E6E6', '4472C4']
  .map((hex, number) => `<c${number}><srgbClr val="${hex}"/></c${number}>`)
  .join('')}</clrScheme></themeElements></theme>`;

const line = (side: string, style = 'thin') => `<${side} style="${style}"><color rgb="FFB98D1F"/></${side}>`;
const styles = `<numFmts><numFmt numFmtId="164" formatCode="0.0 &quot;g/hL&quot;"/></numFmts>
  <fonts><font><sz val="11"/><color theme="1"/></font><font><b/><i val="0"/><sz val="14"/><color theme="4" tint="-0.249977111117893"/></font></fonts>
  <fills><fill><patternFill patternType="none"/></fill>
    <fill><patternFill patternType="solid"><fgColor theme="4" tint="0.39997558519241921"/></patternFill></fill></fills>
  <borders><border/><border>${line('left')}${line('right')}${line('top')}${line('bottom')}</border>
    <border>${line('bottom')}</border></borders>
  <cellXfs><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/>
    <xf numFmtId="164" fontId="1" fillId="1" borderId="1"/>
    <xf numFmtId="14" fontId="0" fillId="0" borderId="2"><alignment indent="2"/></xf></cellXfs>
  <dxfs><dxf><fill><patternFill><bgColor rgb="FFFFCFC4"/></patternFill></fill></dxf><dxf/></dxfs>`;

const thin = { style: 'thin', color: '#b98d1f' };

const shown = (style: string) =>
  cellsOf({ sheets: [rows(`<c r="A1" s="${style}"><v>1</v></c>`)], styles, theme })[0]?.[0];

describe('the look of a cell in a file', () => {
  it('is absent where it is the usual one, so that a dark page can turn it', () => {
    expect(shown('0')).toEqual({ value: 1 });
    expect(shown('99')).toEqual({ value: 1 });
  });

  it('has weight, size, colours of the theme, ground, frame and format', () => {
    // What office programs show for this colour as “lighter 40 %” and “darker 25 %”, some of them one step of 256 off.
    expect(shown('1')).toEqual({
      value: 1,
      format: '0.0 "g/hL"',
      look: {
        ...{ bold: true, size: 14, color: '#2f5597', fill: '#8faadc' },
        lines: { left: thin, right: thin, top: thin, bottom: thin },
      },
    });
  });

  it('has the line below, the indent and a format that the file names by number only', () => {
    expect(shown('2')).toEqual({ value: 1, format: 'yyyy-mm-dd', look: { lines: { bottom: thin }, indent: 2 } });
  });

  it('shows days of the count from 1904 on their day', () => {
    const before = '<workbookPr date1904="1"/>';
    const { book, leftOut } = opened({ sheets: [rows('<c r="A1" s="2"><v>0</v></c>')], styles, before });
    expect(book.sheets[0]?.rows[0]?.[0]?.value).toBe(1462);
    expect(leftOut).toEqual([words.parts.dates1904]);
  });
});

describe('the shape and the rules of a sheet in a file', () => {
  const only = (inside: string, more = {}) => opened({ sheets: [inside], styles, theme, ...more });

  it('has widths in characters and the rows and columns that stay in view', () => {
    const view = '<sheetViews><sheetView><pane xSplit="2" ySplit="3" state="frozen"/></sheetView></sheetViews>';
    const { book } = only(`${view}<cols><col min="2" max="3" width="12.71"/></cols>${rows()}`);
    expect(book.sheets[0]).toMatchObject({ headerRows: 3, labelColumns: 2, widths: [undefined, 12, 12] });
  });

  it('has rules for numbers between limits and lists of words, and says what it lacks', () => {
    const rules = `<dataValidations><dataValidation type="decimal" error="From 0 to 1." sqref="A1">
      <formula1>0</formula1><formula2>1</formula2></dataValidation>
      <dataValidation type="list" sqref="B1"><formula1>"fine, coarse"</formula1></dataValidation>
      <dataValidation type="decimal" operator="greaterThanOrEqual" sqref="D1"><formula1>-2.5</formula1></dataValidation>
      <dataValidation type="custom" sqref="C1"><formula1>A1=B1</formula1></dataValidation></dataValidations>`;
    const { book, leftOut } = only(`${rows('<c r="A1"><v>1</v></c>')}${rules}`);
    expect(book.sheets[0]?.rows[0]).toEqual([
      {
        value: 1,
        validation: { kind: 'number', limit: [0, 1], message: 'From 0 to 1.' },
        rule: { error: 'From 0 to 1.' },
      },
      { validation: { kind: 'list', of: ['fine', 'coarse'], message: words.oneOf('fine, coarse') }, rule: {} },
      undefined,
      {
        validation: { kind: 'number', limit: [-2.5, Number.MAX_VALUE], message: 'A number from -2.5 on is due here.' },
        rule: {},
      },
    ]);
    expect(leftOut).toEqual([words.parts.validations]);
  });

  it('has the conditional formats that hang on a formula, with their own two looks', () => {
    const rule = (look: number, formula: string, type = 'expression') =>
      `<cfRule type="${type}" dxfId="${look}" priority="1"><formula>${formula}</formula></cfRule>`;
    const block = `<conditionalFormatting sqref="B2:B5">${rule(0, 'B2&gt;9')}${rule(1, 'B2&lt;0')}${rule(0, '3', 'cellIs')}</conditionalFormatting>`;
    const { book, leftOut } = only(`${rows()}${block}`);
    expect(book.sheets[0]?.conditions).toEqual([
      { range: 'B2:B5', formula: '=B2>9', look: 'refused' },
      { range: 'B2:B5', formula: '=B2<0', look: 'unusual' },
    ]);
    expect(leftOut).toEqual([words.parts.conditions, words.parts.conditionLooks]);
  });

  it('says in words what it has and the grid has not', () => {
    const more = { 'xl/charts/chart1.xml': '<a/>', 'xl/vbaProject.bin': 'b', 'xl/media/image1.png': 'c' };
    const { leftOut } = only(`${rows()}<mergeCells/><hyperlinks/>`, { more });
    expect(leftOut).toEqual(
      ['merged', 'charts', 'pictures', 'macros', 'links'].map((one) => words.parts[one as 'merged']),
    );
  });
});
