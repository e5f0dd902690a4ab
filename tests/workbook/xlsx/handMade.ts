import { strToU8, zipSync } from 'fflate';
import { en } from '../../../taskpane/texts/en.js';
import { knowsFunction } from '../../../taskpane/workbook/formula/known.js';
import type { Book, BookCell } from '../../../taskpane/workbook/xlsx/book.js';
import { parseXml } from '../../../taskpane/workbook/xlsx/leanXml.js';
import { readBook } from '../../../taskpane/workbook/xlsx/readBook.js';

export const words = en.open;

const MAIN = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"';
const LINK = 'xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"';
const KIND = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

export const relations = (...targets: readonly (readonly [id: string, kind: string, target: string])[]): string =>
  `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${targets
    .map(([id, kind, target]) => `<Relationship Id="${id}" Type="${KIND}/${kind}" Target="${target}"/>`)
    .join('')}</Relationships>`;

export type TextParts = Readonly<Record<string, string>>;

interface HandMade {
  /** What stands in each sheet element. */
  readonly sheets?: readonly string[];
  readonly names?: readonly string[];
  /** What stands in the workbook element besides the list of sheets. */
  readonly before?: string;
  readonly after?: string;
  readonly styles?: string;
  readonly texts?: string;
  readonly theme?: string;
  readonly more?: TextParts;
}

/** The parts of a small workbook, put together by hand. */
export function partsOf({
  sheets = [],
  names = [],
  before = '',
  after = '',
  more = {},
  ...given
}: HandMade): TextParts {
  const sheetName = (number: number) => names[number] ?? `Sheet ${number + 1}`;
  return {
    '_rels/.rels': relations(['rId1', 'officeDocument', 'xl/workbook.xml']),
    'xl/workbook.xml': `<workbook ${MAIN} ${LINK}>${before}<sheets>${sheets
      .map((_, number) => `<sheet name="${sheetName(number)}" sheetId="${number + 1}" r:id="rId${number + 1}"/>`)
      .join('')}</sheets>${after}</workbook>`,
    'xl/_rels/workbook.xml.rels': relations(
      ...sheets.map((_, number) => [`rId${number + 1}`, 'worksheet', `worksheets/sheet${number + 1}.xml`] as const),
      ['rId1001', 'styles', 'styles.xml'],
      ['rId1002', 'sharedStrings', 'sharedStrings.xml'],
      ['rId1003', 'theme', 'theme/theme1.xml'],
    ),
    ...Object.fromEntries(
      sheets.map((inside, number) => [
        `xl/worksheets/sheet${number + 1}.xml`,
        `<worksheet ${MAIN} ${LINK}>${inside}</worksheet>`,
      ]),
    ),
    ...(given.styles ? { 'xl/styles.xml': `<styleSheet ${MAIN}>${given.styles}</styleSheet>` } : {}),
    ...(given.texts ? { 'xl/sharedStrings.xml': `<sst ${MAIN}>${given.texts}</sst>` } : {}),
    ...(given.theme ? { 'xl/theme/theme1.xml': given.theme } : {}),
    ...more,
  };
}

export const zipped = (parts: TextParts, level: 0 | 6 = 6): Uint8Array =>
  zipSync(Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)])), { level });

export const readParts = (parts: TextParts) => readBook(zipped(parts), parseXml, words, knowsFunction);

/** What is in the bytes of a file that has to be readable. */
export function readOf(bytes: Uint8Array): { book: Book; leftOut: readonly string[] } {
  const read = readBook(bytes, parseXml, words, knowsFunction);
  if ('refusal' in read) throw new Error(read.refusal);
  return read;
}

/** A workbook that has to be readable, and what was left out of it. */
export function opened(handMade: HandMade): { book: Book; leftOut: readonly string[] } {
  return readOf(zipped(partsOf(handMade)));
}

/** A sheet of one row per text. */
export const rows = (...lines: readonly string[]): string =>
  `<sheetData>${lines.map((line, number) => `<row r="${number + 1}">${line}</row>`).join('')}</sheetData>`;

/** The cells of the first sheet by row and column. */
export const cellsOf = (handMade: HandMade): readonly (readonly (BookCell | undefined)[] | undefined)[] =>
  opened(handMade).book.sheets[0]?.rows ?? [];
