import { describe, expect, it } from 'vitest';
import { en } from '../../taskpane/texts/en.js';
import { CellValueType, type ICellData } from '../../taskpane/workbook/engine/core.js';
import { notationOf } from '../../taskpane/workbook/entry/notation.js';
import { decode } from '../../taskpane/workbook/text/decode.js';
import { type ReadText, readText, type TextChoices } from '../../taskpane/workbook/text/readText.js';
import { separatorOf } from '../../taskpane/workbook/text/rows.js';
import { LIMITS } from '../../taskpane/workbook/xlsx/limits.js';
import { processorTime } from '../processorTime.js';

const bytes = (text: string) => new TextEncoder().encode(text);
const read = (file: string | Uint8Array, locale = 'de-DE', choices: TextChoices = {}) =>
  readText(
    typeof file === 'string' ? bytes(file) : file,
    { notation: notationOf(locale), words: en.entry },
    en.open,
    choices,
  );
function understood(file: string | Uint8Array, locale?: string, choices?: TextChoices): ReadText {
  const answer = read(file, locale, choices);
  if ('refusal' in answer) throw new Error(answer.refusal);
  return answer;
}
const values = ({ sheet }: ReadText) =>
  Object.values(sheet.cellData ?? {}).map((row) =>
    Object.values(row as Record<number, ICellData>).map((cell) => cell.v),
  );
const patterns = ({ sheet }: ReadText, row: number) =>
  Object.values(sheet.cellData?.[row] ?? {}).map(({ s }) => (typeof s === 'object' ? s?.n?.pattern : undefined));

const LOG = `Zeit;Druck;Trübung;Charge
;bar;EBC;
27.11.2026 08:00:00;0,45;0,62;0017
27.11.2026 08:05:00;0,51;n.v.;0017
27.11.2026 08:10:00;0,58;1,234;0018
`;

describe('a text file', () => {
  it('is a table with titles, units, times, figures and texts, each understood by itself', () => {
    const log = understood(LOG, 'en-GB');
    expect(log).toMatchObject({ separator: ';', decimal: ',', headerRows: 2, rows: 5, encoding: 'utf-8' });
    expect(log.columns).toEqual([
      { title: 'Zeit', kind: 'moment', texts: 0 },
      { title: 'Druck bar', kind: 'number', texts: 0 },
      { title: 'Trübung EBC', kind: 'number', texts: 1 },
      { title: 'Charge', kind: 'text', texts: 0 },
    ]);
    expect(values(log)[2]).toEqual([46353 + 8 / 24, 0.45, 0.62, '0017']);
    expect(values(log)[3]?.[2]).toBe('n.v.');
    expect(values(log)[4]?.[2]).toBe(1.234);
    expect(patterns(log, 2)[0]).toBe('dd/mm/yyyy hh:mm:ss');
    expect(log.sheet.freeze).toMatchObject({ ySplit: 2 });
  });

  // RFC 4180, 2.5 to 2.7: fields in quotes may hold separators, line ends and quotes that are doubled.
  it('keeps what stands in quotes together', () => {
    const file = understood('"beer, pale",note\r\n"a ""b""\r\nc",1.5\r\n', 'en-GB');
    expect(values(file)).toEqual([
      ['beer, pale', 'note'],
      ['a "b"\r\nc', 1.5],
    ]);
  });

  it.each([
    ['a;b\n1,5;2,5\n3,5;4,5\n', ';'],
    ['1,5;2,5\n3,5;4,5\n', ';'],
    ['a,b\n1.5,2.5\n', ','],
    ['a\tb\n1,5\t2,5\n', '\t'],
    ['a|b|c\n1|2|3\n', '|'],
    ['sep=|\na;b|c\n', '|'],
    ['exported by the plant\n\na;b\n1;2\n3;4\n5;6\n7;8\n9;10\n', ';'],
    ['one\ntwo\n', '\t'],
  ])('shows its separator by rows of one width: %j', (text, separator) => {
    expect(separatorOf(text)).toBe(separator);
  });

  it('between commas takes the point for the decimal mark, unless cells in quotes show another', () => {
    expect(values(understood('a,b\n1.234,2.345\n'))[1]).toEqual([1.234, 2.345]);
    expect(values(understood('a,b\n"1,5","2,25"\n', 'en-GB'))[1]).toEqual([1.5, 2.25]);
  });

  it('says which number and which date may be read in two ways, and reads them as was chosen', () => {
    const file = 'day;mass\n01/02/2026;1.234\n';
    const read = understood(file);
    expect([read.open, read.openDate]).toEqual(['1.234', '01/02/2026']);
    expect(values(read)[1]).toEqual([46054, 1234]);
    const chosen = understood(file, 'de-DE', { decimal: '.', order: 'mdy' });
    expect(values(chosen)[1]).toEqual([46024, 1.234]);
    expect([chosen.open, chosen.openDate]).toEqual([undefined, undefined]);
  });

  it('is read anew with other titles, another separator and columns that stay text', () => {
    expect(understood(LOG, 'de-DE', { headerRows: 1 }).columns[1]).toMatchObject({ title: 'Druck', texts: 1 });
    expect(understood(LOG, 'de-DE', { separator: '|' }).columns).toHaveLength(1);
    expect(values(understood(LOG, 'de-DE', { asText: [1] }))[2]?.[1]).toBe('0,45');
  });

  it('holds no formulas: what looks like one is a text', () => {
    const { sheet } = understood('a;b\n1;=HYPERLINK("x")\n2;+1+1\n');
    expect(sheet.cellData?.[1]?.[1]).toMatchObject({ v: '=HYPERLINK("x")', t: CellValueType.FORCE_STRING });
    expect(sheet.cellData?.[2]?.[1]?.f).toBeUndefined();
  });

  it('reads dates with times as control systems write them', () => {
    const file = 't,x\n2026-11-27T08:00:00.250Z,1\n2026/11/27 08:00,2\n2026-11-27 08:00:00+01:00,3\n';
    const read = understood(file, 'en-US');
    expect(read.columns[0]?.kind).toBe('moment');
    const days = values(read)
      .slice(1)
      .map(([day]) => day as number);
    expect(days[0]).toBeCloseTo(46353 + 8 / 24 + 0.25 / 86_400, 9);
    expect(days.slice(1)).toEqual([46353 + 8 / 24, 46353 + 8 / 24]);
    expect(patterns(read, 1)[0]).toBe('yyyy-mm-dd hh:mm:ss.000');
  });
});

describe('the letters of a text file', () => {
  const wide = (text: string, little: boolean) =>
    Uint8Array.from(
      [...text].flatMap((letter) => {
        const code = letter.charCodeAt(0);
        return little ? [code & 255, code >> 8] : [code >> 8, code & 255];
      }),
    );
  it.each([
    ['utf-8', bytes('\ufeffTrübung')],
    ['utf-8', bytes('Trübung')],
    ['windows-1252', Uint8Array.from([...'Trübung'].map((letter) => letter.charCodeAt(0)))],
    ['utf-16le', wide('\ufeffTrübung', true)],
    ['utf-16be', wide('\ufeffTrübung', false)],
    ['utf-16le', wide('Trübung', true)],
    ['utf-16be', wide('Trübung', false)],
  ] as const)('are seen from its bytes: %s', (encoding, file) => {
    expect(decode(file)).toEqual({ text: 'Trübung', encoding });
  });

  it('are those that were chosen, and none in a file that is no text', () => {
    expect(decode(Uint8Array.from([0xc3, 0xbc]), 'windows-1252')?.text).toBe('Ã¼');
    expect(decode(Uint8Array.from([0x50, 0x4b, 3, 4, 0, 0, 0, 0, 9, 9, 9, 9]))).toBeUndefined();
    expect(read(Uint8Array.from([0x50, 0x4b, 3, 4, 0, 0, 0, 0, 9, 9, 9, 9]))).toEqual({ refusal: en.open.noText });
  });
});

describe('a hostile text file', () => {
  const megabytes = (piece: string, most = 19) => bytes(piece.repeat(Math.floor((most * 1024 * 1024) / piece.length)));
  it.each([
    ['only separators', megabytes(';'), en.open.cells(LIMITS.cells)],
    ['a row too many', bytes('1\n'.repeat(LIMITS.rows + 1)), en.open.reach(LIMITS.rows, LIMITS.columns)],
    ['a column too many', bytes(`${'1;'.repeat(LIMITS.columns)}1\n`), en.open.reach(LIMITS.rows, LIMITS.columns)],
    ['cells too many', bytes('1;2;3;4;5;6;7;8\n'.repeat(60_000)), en.open.cells(LIMITS.cells)],
    ['nothing', bytes(''), en.open.empty],
    ['blank lines', bytes('\n\n;;\n'), en.open.empty],
  ])('is refused by a sentence within two seconds: %s', (_, file, refusal) => {
    const { result: answer, took } = processorTime(() => read(file));
    expect(answer).toEqual({ refusal });
    expect(took).toBeLessThan(2000);
  });

  it.each([
    ['quotes that never end', bytes(`a;b\n${'"x;1\n'.repeat(50_000)}`)],
    ['doubled quotes', bytes(`a;b\n${'"x""y;1\n'.repeat(50_000)}`)],
    ['one long text', megabytes('x ')],
    ['digits without end', megabytes('1')],
  ])('is read in no more than that otherwise: %s', (_, file) => {
    const { result: answer, took } = processorTime(() => read(file));
    expect(answer).toHaveProperty('rows');
    expect(took).toBeLessThan(2000);
  });
});
