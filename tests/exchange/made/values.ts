import { day, empty, fault, formula, inline, number, shared, sheetData, truth } from '../cells.js';
import { looks } from '../looks.js';
import type { Made } from '../make.js';

const ERRORS = ['#NULL!', '#DIV/0!', '#VALUE!', '#REF!', '#NAME?', '#NUM!', '#N/A'];

/** Numbers, texts, truths, errors and days of every kind that a file can hold. */
export const values: Made = {
  styles: looks({
    formats: ['yyyy-mm-dd', '[h]:mm', 'dd.mm.yyyy hh:mm', '@'],
    cells: [{ format: 0 }, { format: 1 }, { format: 2 }, { format: 3 }],
  }),
  texts: `<si><t>one</t></si><si><t xml:space="preserve">  room on both sides  </t></si>
    <si><r><t xml:space="preserve">rich </t></r><r><rPr><b/></rPr><t>text</t></r></si>
    <si><t>two&#10;lines</t></si><si><t>ä &amp; &lt;ö&gt; "ü" 試 🙂</t></si><si><t>=1+1</t></si><si><t>_x000D_</t></si><si><t/></si><si><t>_x005F_x000D_</t></si>
    <si><t>two_x000D_&#10;lines</t></si>`,
  sheets: [
    {
      name: 'Values',
      inside: sheetData([
        ...['0', '-0', '1', '-1.5', '0.1', '1E-300', '1.7976931348623157E+308', '123456789012345', '2.5e-7'].map(
          (digits, n) => number(`A${n + 1}`, digits),
        ),
        ...[0, 1, 2, 3, 4, 5, 6, 7, 8, 9].map((index) => shared(`B${index + 1}`, index)),
        ...['inline', 'trailing ', '01234', '1,5', '+1', '@A1', 'TRUE', '#N/A'].map((text, n) =>
          inline(`C${n + 1}`, text),
        ),
        truth('D1', true),
        truth('D2', false),
        ...ERRORS.map((word, n) => fault(`E${n + 1}`, word)),
        number('F1', 1, 1),
        number('F2', 60, 1),
        number('F3', 61, 1),
        number('F4', 46000.75, 3),
        number('F5', 1.5, 2),
        day('F6', '2025-12-09', 1),
        day('F7', '2025-12-09T18:00:00', 3),
        number('F8', 2958465, 1),
        empty('G1', 1),
        // A number stays one in the format of texts, and a text one that reads like an error.
        number('G2', 7, 4),
        formula('G3', 'SUM(G2,1)', 8),
        formula('G4', 'ISTEXT(C8)', true),
      ]),
    },
    { name: 'Empty', inside: '<sheetData/>' },
  ],
};

/** The same days counted from 1904, with durations beside them that are no days. */
export const from1904: Made = {
  before: '<workbookPr date1904="1"/>',
  styles: looks({ formats: ['yyyy-mm-dd', '[h]:mm', 'hh:mm'], cells: [{ format: 0 }, { format: 1 }, { format: 2 }] }),
  sheets: [
    {
      name: 'Days',
      inside: sheetData([
        number('A1', 44538, 1),
        number('B1', 1.5, 2),
        number('C1', 0.75, 3),
        number('D1', 44538),
        day('A2', '2025-12-09', 1),
      ]),
    },
  ],
};
