import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { parseXml } from '../../../taskpane/workbook/xlsx/leanXml.js';
import { LIMITS } from '../../../taskpane/workbook/xlsx/limits.js';
import { readBook } from '../../../taskpane/workbook/xlsx/readBook.js';
import { processorTime } from '../../processorTime.js';
import { partsOf, readParts, rows, words, zipped } from './handMade.js';

const plain = partsOf({ sheets: [rows('<c r="A1"><v>1</v></c>')] });
const read = (bytes: Uint8Array) => readBook(bytes, parseXml, words);
const refusalOf = (answer: ReturnType<typeof read>) => ('refusal' in answer ? answer.refusal : 'opened');

/** Letters that cannot be packed to few bytes; the same on every run. */
function noise(length: number): string {
  let seed = 1;
  return Array.from({ length }, () => {
    seed = (seed * 48_271) % 2_147_483_647;
    return (seed % 36).toString(36);
  }).join('');
}
describe('a file that unpacks to very much', () => {
  it('is refused while a part unpacks to too much, whatever size it states', () => {
    const large = new Uint8Array(LIMITS.part + 1);
    large.set(strToU8(noise(1_000_000)));
    const bytes = zipSync({
      ...Object.fromEntries(Object.entries(plain).map(([name, text]) => [name, strToU8(text)])),
      'xl/sharedStrings.xml': large,
    });
    expect(bytes.length).toBeLessThan(LIMITS.part / 50);
    expect(refusalOf(read(bytes))).toBe(words.part('xl/sharedStrings.xml', 40));
    // The stated size is turned into a small one wherever it stands.
    const view = new DataView(bytes.buffer);
    for (let at = 0; at + 4 <= bytes.length; at += 1)
      if (view.getUint32(at, true) === LIMITS.part + 1) view.setUint32(at, 10, true);
    expect(refusalOf(read(bytes))).toBe(words.part('xl/sharedStrings.xml', 40));
  });

  it('is refused where its parts unpack to too much together', () => {
    const letters = `<!--${noise(1_000_000)}-->`;
    const padding = letters + ' '.repeat(LIMITS.part - letters.length - 1000);
    const parts = partsOf({ sheets: [0, 1, 2].map(() => padding) });
    expect(refusalOf(readParts(parts))).toBe(words.unpacked(100));
  });

  it('is refused at once where few bytes unpack to very many empty cells, in one part or in several', () => {
    const empty = `<sheetData><row>${'<c/>'.repeat(5_000_000)}</row></sheetData>`;
    const fifth = `<sheetData><row>${'<c/>'.repeat(250_000)}</row></sheetData>`;
    const bombs = [[empty, empty], Array.from({ length: 20 }, () => fifth)].map((sheets) =>
      zipped(partsOf({ sheets })),
    );
    for (const bytes of bombs) {
      expect(bytes.length).toBeLessThan(100_000);
      const { result, took } = processorTime(() => refusalOf(read(bytes)));
      expect(result).toBe(words.dense(LIMITS.dense));
      // The parser of a page is several times as fast as the one here.
      expect(took).toBeLessThan(10_000);
    }
  }, 60_000);
});
