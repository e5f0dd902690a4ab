import { inline, number, sheetData } from '../cells.js';
import type { Made } from '../make.js';

const body = sheetData([
  inline('A1', 'head'),
  inline('B1', 'head 2'),
  ...[2, 3, 4, 5, 6].map((n) => number(`A${n}`, n)),
]);

/** Print set-up: areas, titles, margins, orientation, paper, scale, headers, breaks. */
export const print: Made = {
  after: `<definedNames><definedName name="_xlnm.Print_Area" localSheetId="0">Print!$A$1:$B$5</definedName><definedName name="_xlnm.Print_Titles" localSheetId="0">Print!$A:$A,Print!$1:$1</definedName><definedName name="_xlnm.Print_Area" localSheetId="1">Scaled!$2:$4,Scaled!$A:$A</definedName></definedNames>`,
  sheets: [
    {
      name: 'Print',
      inside: `<sheetPr><pageSetUpPr fitToPage="1"/></sheetPr>${body}<printOptions horizontalCentered="1" gridLines="1"/><pageMargins left="1" right="1" top="1.5" bottom="1.25" header="0.5" footer="0.5"/><pageSetup paperSize="9" orientation="portrait" fitToWidth="1" fitToHeight="2"/><headerFooter><oddHeader>&amp;CFiltration</oddHeader><oddFooter>&amp;RPage &amp;P</oddFooter></headerFooter><rowBreaks count="3" manualBreakCount="2"><brk id="2" max="16383" man="1"/><brk id="3" max="16383"/><brk id="4" max="16383" man="1"/></rowBreaks><colBreaks count="1" manualBreakCount="1"><brk id="1" max="1048575" man="1"/></colBreaks>`,
    },
    { name: 'Scaled', inside: `${body}<pageSetup paperSize="8" scale="70" orientation="landscape"/>` },
    { name: 'Plain', inside: body },
  ],
};
