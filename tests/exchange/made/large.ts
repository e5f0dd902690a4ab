import { formula, inline, number, sheetData } from '../cells.js';
import type { Made } from '../make.js';

/** A year and more of daily runs: many rows, each with a formula that is shared. */
export const large = (count: number): Made => ({
  sheets: [
    {
      name: 'Daily runs',
      inside: sheetData(
        Array.from({ length: count }, (_, n) => n + 1).flatMap((row) => [
          number(`A${row}`, 40000 + row),
          inline(`B${row}`, `run ${row}`),
          formula(`C${row}`, row === 1 ? 'A1*2' : '', (40000 + row) * 2, {
            as: row === 1 ? `t="shared" ref="C1:C${count}" si="0"` : 't="shared" si="0"',
          }),
        ]),
      ),
    },
  ],
});
