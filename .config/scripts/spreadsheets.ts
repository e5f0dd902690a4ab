import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { placeOf, rectangleOf } from '../../taskpane/workbook/xlsx/readPlaces.js';
import { factsIn } from '../../tests/exchange/facts/workbook.js';
import { bundledForNode } from '../forNode.js';
import { lettersIn } from '../pdfLetters.js';

type Numbers = ReadonlyMap<string, number>;

/** Every number of a file by its place: those that array formulas fill, and all others. */
function numbersIn(bytes: Uint8Array): { readonly arrays: Numbers; readonly single: Numbers } {
  const facts = factsIn(bytes);
  const ranges = facts.flatMap(({ kind, what }) =>
    kind === 'array' ? (rectangleOf(what.split(',')[0] ?? '') ?? []) : [],
  );
  const isFilled = (address: string): boolean => {
    const place = placeOf(address);
    return ranges.some(
      ({ top, left, bottom, right }) =>
        place && place.row >= top && place.row <= bottom && place.column >= left && place.column <= right,
    );
  };
  const numbers = facts.flatMap(({ kind, where, what }) =>
    kind === 'value' && Number.isFinite(Number(what)) ? [[where, Number(what)] as const] : [],
  );
  const filled = ([where]: readonly [string, number]) => isFilled(where.slice(where.lastIndexOf('!') + 1));
  return { arrays: new Map(numbers.filter(filled)), single: new Map(numbers.filter((one) => !filled(one))) };
}

const folder = mkdtempSync(join(tmpdir(), 'spreadsheets-'));

/** Opens a file in LibreOffice, and gives what is saved from there in another form. */
function converted(name: string, bytes: Uint8Array, form: string): Uint8Array {
  const file = join(folder, name);
  const done = join(folder, 'done');
  writeFileSync(file, bytes);
  execFileSync(
    'soffice',
    [
      ...['--headless', `-env:UserInstallation=file://${folder}/profile`],
      ...['--convert-to', form, '--outdir', done, file],
    ],
    { stdio: 'pipe', timeout: 120_000 },
  );
  return new Uint8Array(readFileSync(join(done, `${basename(file, '.xlsx')}.${form.split(':')[0]}`)));
}

/** All numbers that are in a file once LibreOffice has saved it. */
function through(name: string, bytes: Uint8Array): Numbers {
  const { arrays, single } = numbersIn(converted(name, bytes, 'xlsx:Calc MS Excel 2007 XML'));
  return new Map([...arrays, ...single]);
}

/** In points: what nothing on paper is below, but for what a program rounds. */
const LEAST = 7.99;

/** Which of some numbers are not what they were. */
const lost = (numbers: Numbers, after: Numbers): readonly string[] =>
  [...numbers].flatMap(([place, value]) => {
    const now = after.get(place);
    return now !== undefined && Math.abs(now - value) <= 1e-12 * Math.abs(value)
      ? []
      : [`${place}: ${value} became ${now}`];
  });

let failed = false;
function tell(file: string, losses: readonly string[], kept: string): void {
  if (losses.length > 0) failed = true;
  console.log(losses.length > 0 ? `FAILED: ${file}: ${losses.slice(0, 5).join('; ')}` : `${file}: ${kept}`);
}

// Run where LibreOffice is installed: each starter sheet must open there. With its formulas it keeps every number but those
// of array formulas, whose functions that program does not know; with values in their place it keeps every number.
const { startersBothWays } = await bundledForNode<typeof import('../startersEntry.js')>('starters');
for (const { name, formulas, values, papers } of await startersBothWays()) {
  const { arrays, single } = numbersIn(formulas);
  const few = single.size >= 30 ? [] : [`only ${single.size} single numbers are in the file`];
  const after = through(`${name}.xlsx`, formulas);
  const spilled = arrays.size - lost(arrays, after).length;
  const all = new Map([...single, ...arrays]);
  tell(
    `${name}.xlsx`,
    [...few, ...lost(single, after)],
    `LibreOffice keeps all ${single.size} single numbers, and ${spilled} of ${arrays.size} of arrays`,
  );
  tell(
    `${name}.xlsx with values`,
    lost(all, through(`${name} values.xlsx`, values)),
    `LibreOffice keeps all ${all.size} numbers, those of arrays among them`,
  );
  for (const { paper, bytes } of papers) {
    const { heights, pages } = lettersIn(converted(`${name} ${paper}.xlsx`, bytes, 'pdf'));
    const [smallest, largest] = [Math.min(...heights), Math.max(...heights)];
    const printed = `${heights.length} texts on ${pages} pages, the smallest with ${smallest.toFixed(2)} points`;
    const legible = smallest >= LEAST && largest <= 20 && heights.length > 200;
    tell(`${name}.xlsx on ${paper}`, legible ? [] : [printed], printed);
  }
}
rmSync(folder, { recursive: true, force: true });
process.exit(failed ? 1 : 0);
