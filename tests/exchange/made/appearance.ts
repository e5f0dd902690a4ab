import { empty, inline, number, sheetData } from '../cells.js';
import { font, lines, looks, solid } from '../looks.js';
import type { Made } from '../make.js';

const FORMATS = [
  '0.00',
  '#,##0.0 "kg"',
  '0.0%',
  '0.00E+00',
  'yyyy-mm-dd',
  '[h]:mm',
  '# ?/?',
  '#,##0;[Red]-#,##0',
  '@',
  '+0;-0;0',
  '_-* #,##0.00 €_-',
];
const grid = (count: number, from = 1) => Array.from({ length: count }, (_, n) => n + from);

export const formats: Made = {
  styles: looks({ formats: FORMATS, cells: FORMATS.map((_, format) => ({ format })) }),
  sheets: [{ name: 'Formats', inside: sheetData(grid(FORMATS.length).map((n) => number(`A${n}`, 12.375, n))) }],
};

const FONTS = [
  font('<b/>'),
  font('<i/>'),
  font('<u/>'),
  font('<u val="double"/>'),
  font('<strike/>'),
  font('<color rgb="FFC00000"/>'),
  font('', 16),
  font('', 11, 'Arial'),
  font('<b/><i/><color rgb="FF0000FF"/>', 14, 'Times New Roman'),
  font('<vertAlign val="superscript"/>'),
];
export const fonts: Made = {
  styles: looks({ fonts: FONTS, cells: FONTS.map((_, n) => ({ font: n })) }),
  sheets: [{ name: 'Fonts', inside: sheetData(grid(FONTS.length).map((n) => inline(`A${n}`, `text ${n}`, n))) }],
};

const FILLS = [
  solid('FFEB9C'),
  solid('D9E1F2'),
  '<fill><patternFill patternType="lightGrid"><fgColor rgb="FF00B050"/><bgColor rgb="FFFFFFFF"/></patternFill></fill>',
  '<fill><gradientFill degree="90"><stop position="0"><color rgb="FFFFFFFF"/></stop><stop position="1"><color rgb="FF4472C4"/></stop></gradientFill></fill>',
];
export const fills: Made = {
  styles: looks({ fills: FILLS, cells: FILLS.map((_, fill) => ({ fill })) }),
  sheets: [
    {
      name: 'Fills',
      inside: sheetData(grid(FILLS.length).flatMap((n) => [inline(`A${n}`, 'a', n), empty(`B${n}`, n)])),
    },
  ],
};

const BORDERS = [
  ...['left', 'right', 'top', 'bottom'].map((side) => lines({ [side]: 'thin' })),
  lines({ left: 'thin', right: 'thin', top: 'thin', bottom: 'thin' }),
  ...['medium', 'thick', 'double', 'dashed', 'dotted', 'hair'].map((bottom) => lines({ bottom })),
  lines({ top: 'thin', bottom: 'double' }),
];
export const borders: Made = {
  styles: looks({ borders: BORDERS, cells: BORDERS.map((_, border) => ({ border })) }),
  sheets: [{ name: 'Borders', inside: sheetData(grid(BORDERS.length).map((n) => number(`B${n * 2}`, n, n))) }],
};

const ALIGNED = [
  ...['left', 'center', 'right', 'justify', 'fill', 'centerContinuous'].map((one) => `horizontal="${one}"`),
  ...['top', 'center', 'bottom'].map((one) => `vertical="${one}"`),
  'wrapText="1"',
  'horizontal="left" indent="2"',
  'textRotation="90"',
  'textRotation="45"',
  'shrinkToFit="1"',
  'horizontal="center" vertical="center" wrapText="1"',
];
export const alignment: Made = {
  styles: looks({ cells: ALIGNED.map((align) => ({ align })) }),
  sheets: [
    {
      name: 'Alignment',
      inside: sheetData(grid(ALIGNED.length).map((n) => inline(`A${n}`, 'a longer text in its cell', n))),
    },
  ],
};

/** Heights, widths, what is hidden, grouped, merged, frozen, coloured; a sheet without lines and one at half size. */
export const shape: Made = {
  before: '<bookViews><workbookView activeTab="2"/></bookViews>',
  sheets: [
    {
      name: 'Shape',
      inside: `<sheetPr><tabColor rgb="FF70AD47"/></sheetPr><sheetViews><sheetView workbookViewId="0" showGridLines="0" zoomScale="80"><pane xSplit="1" ySplit="2" topLeftCell="B3" activePane="bottomRight" state="frozen"/></sheetView></sheetViews><sheetFormatPr defaultRowHeight="15"/><cols><col min="1" max="1" width="20.7109375" customWidth="1"/><col min="2" max="2" width="9.140625" customWidth="1" hidden="1"/><col min="3" max="5" width="4.7109375" customWidth="1"/></cols>${sheetData(
        [inline('A1', 'head'), inline('C1', 'across'), ...grid(8, 2).map((n) => number(`A${n}`, n))],
        {
          1: 'ht="30" customHeight="1"',
          3: 'hidden="1"',
          5: 'outlineLevel="1"',
          6: 'outlineLevel="1"',
          7: 'ht="7.5" customHeight="1"',
        },
      )}<mergeCells count="2"><mergeCell ref="C1:E1"/><mergeCell ref="C3:D4"/></mergeCells>`,
    },
    { name: 'Hidden', state: 'hidden', inside: sheetData([number('A1', 1)]) },
    { name: 'Shown', inside: sheetData([number('A1', 2)]) },
    { name: 'Very hidden', state: 'veryHidden', inside: sheetData([number('A1', 3)]) },
  ],
};
