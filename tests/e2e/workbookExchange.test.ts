import { describe, expect, it } from 'vitest';
import { differences, inWords } from '../exchange/compare.js';
import { factsIn } from '../exchange/facts/workbook.js';
import { CORPUS } from '../exchange/made/index.js';
import { bytesOfMade } from '../exchange/make.js';
import { throughGrid } from '../exchange/through.js';
import { openFile, savedFile } from './files.js';
import { eachOnOwnSheet, type OpenWorkbook } from './workbookPage.js';

let workbook: OpenWorkbook;
eachOnOwnSheet((opened) => {
  workbook = opened;
});

describe('a workbook of the corpus, opened and saved in a browser', () => {
  it.each(['shared formulas', 'alignment', 'shape of sheets', 'filters', 'print'])(
    'is the file that the grid without a page saves: %s',
    async (name) => {
      const made = CORPUS[name];
      if (!made) throw new Error(`The corpus has no workbook of ${name}.`);
      const bytes = bytesOfMade(made);
      await openFile(workbook.page, `${name}.xlsx`, bytes);
      const expected = factsIn((await throughGrid(bytes)).bytes);
      const { bytes: saved } = await savedFile(workbook.page);
      expect(expected.length).toBeGreaterThan(20);
      expect(differences(expected, factsIn(saved)).map(inWords)).toEqual([]);
      expect(workbook.problems).toEqual([]);
    },
  );
});
