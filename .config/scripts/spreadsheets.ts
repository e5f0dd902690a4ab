import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DOMParser } from '@xmldom/xmldom';
import { en } from '../../taskpane/texts/en.js';
import type { Book, BookCell } from '../../taskpane/workbook/xlsx/book.js';
import { readBook } from '../../taskpane/workbook/xlsx/readBook.js';
import type { XmlElement } from '../../taskpane/workbook/xlsx/readXml.js';
import { worksOnRanges } from '../../taskpane/workbook/xlsx/writeFormula.js';
import { dist } from '../paths.js';

const parse = (text: string) =>
  new DOMParser().parseFromString(text, 'application/xml').documentElement as unknown as XmlElement;

function bookIn(file: string): Book {
  const read = readBook(new Uint8Array(readFileSync(file)), parse, en.open);
  if ('refusal' in read) throw new Error(`${file}: ${read.refusal}`);
  return read.book;
}

const isArray = ({ formula, spill }: BookCell): boolean =>
  spill !== undefined || (formula !== undefined && worksOnRanges(formula));

/** Every number that is typed or the answer of a plain formula: LibreOffice knows no array formula of another program's functions. */
function numbersIn(book: Book): ReadonlyMap<string, number> {
  return new Map(
    book.sheets.flatMap(({ name, rows }) =>
      rows.flatMap((row, r) =>
        (row ?? []).flatMap((cell, c) =>
          cell && typeof cell.value === 'number' && !isArray(cell) ? [[`${name} ${r} ${c}`, cell.value] as const] : [],
        ),
      ),
    ),
  );
}

/** Opens a file in LibreOffice, saves it from there, and says what has got lost. */
function lost(file: string, folder: string): readonly string[] {
  const convert = (to: string) =>
    execFileSync(
      'soffice',
      ['--headless', `-env:UserInstallation=file://${folder}/profile`, '--convert-to', to, '--outdir', folder, file],
      {
        stdio: 'pipe',
        timeout: 120_000,
      },
    );
  convert('xlsx:Calc MS Excel 2007 XML');
  const [before, after] = [bookIn(file), bookIn(join(folder, file.split('/').at(-1) as string))];
  const kept = numbersIn(after);
  const numbers = [...numbersIn(before)];
  if (numbers.length < 30) return [`only ${numbers.length} numbers are in the file`];
  return numbers.flatMap(([place, value]) => {
    const now = kept.get(place);
    return now !== undefined && Math.abs(now - value) <= 1e-12 * Math.abs(value)
      ? []
      : [`${place}: ${value} became ${now}`];
  });
}

// Run where LibreOffice is installed: each starter sheet must open there and keep its numbers. One line for each file.
const starters = join(dist, 'starters');
const folder = mkdtempSync(join(tmpdir(), 'spreadsheets-'));
let failed = false;
for (const name of readdirSync(starters).filter((one) => one.endsWith('.xlsx'))) {
  const losses = lost(join(starters, name), folder);
  if (losses.length > 0) failed = true;
  console.log(
    losses.length === 0
      ? `${name}: opens in LibreOffice with its numbers`
      : `FAILED: ${name}: ${losses.slice(0, 5).join('; ')}`,
  );
}
rmSync(folder, { recursive: true, force: true });
process.exit(failed ? 1 : 0);
