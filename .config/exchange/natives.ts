import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { formulaInFile } from '../../taskpane/workbook/xlsx/writeFormula.js';
import { answers, type Single, type Value } from '../../tests/natives/answers.js';
import { CELLS } from '../../tests/natives/cases/cells.js';
import { CASES, ROWS } from '../../tests/natives/cases/index.js';
import { OTHERWISE } from '../../tests/natives/otherwise.js';
import { path } from '../paths.js';
import { recalculated } from './programs.js';

const FILE = path('tests/natives/libreoffice.json');
const escaped = (text: string) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
const plain = (text: string) =>
  text.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&amp;', '&');

function cell(address: string, content: number | string | null): string {
  if (content === null) return '';
  if (typeof content === 'number') return `<c r="${address}"><v>${content}</v></c>`;
  if (content.startsWith('=')) return `<c r="${address}"><f>${escaped(content.slice(1))}</f></c>`;
  return `<c r="${address}" t="inlineStr"><is><t xml:space="preserve">${escaped(content)}</t></is></c>`;
}

const letter = (column: number): string => String.fromCharCode(65 + column);

/** One workbook with the cells that the cases read and below them every case. */
function workbook(): Uint8Array {
  const given = CELLS.map((row, n) => {
    const cells = row.map((content, column) => cell(`${letter(column)}${n + 1}`, content));
    return `<row r="${n + 1}">${cells.join('')}</row>`;
  });
  const asked = CASES.map(({ formula, rows, columns }, n) => {
    const row = ROWS[n]!;
    const array = rows * columns > 1 ? ` t="array" ref="A${row}:${letter(columns - 1)}${row + rows - 1}"` : '';
    return `<row r="${row}"><c r="A${row}"><f${array}>${escaped(formulaInFile(formula))}</f></c></row>`;
  });
  const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>';
  const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
  const kinds = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
  const office = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
  const relations = (kind: string, target: string) =>
    `${head}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="r1" Type="${office}/${kind}" Target="${target}"/></Relationships>`;
  const parts: Record<string, string> = {
    '[Content_Types].xml': `${head}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Override PartName="/xl/workbook.xml" ContentType="${kinds}.sheet.main+xml"/><Override PartName="/xl/sheet.xml" ContentType="${kinds}.worksheet+xml"/></Types>`,
    '_rels/.rels': relations('officeDocument', 'xl/workbook.xml'),
    'xl/workbook.xml': `${head}<workbook xmlns="${main}" xmlns:r="${office}"><sheets><sheet name="Cases" sheetId="1" r:id="r1"/></sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': relations('worksheet', 'sheet.xml'),
    'xl/sheet.xml': `${head}<worksheet xmlns="${main}"><sheetData>${[...given, ...asked].join('')}</sheetData></worksheet>`,
  };
  return zipSync(Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)])));
}

function contentOf(kind: string | undefined, text: string, texts: readonly string[]): Single {
  if (kind === 's') return texts[Number(text)] ?? '';
  if (kind === 'b') return text === '1';
  return kind === 'str' || kind === 'e' ? plain(text) : Number(text);
}

/** What LibreOffice calculates for every case. */
function calculated(): { version: string; values: Record<string, Value> } {
  const folder = mkdtempSync(join(tmpdir(), 'natives-'));
  const out = join(folder, 'out');
  mkdirSync(out);
  writeFileSync(join(folder, 'cases.xlsx'), workbook());
  recalculated([join(folder, 'cases.xlsx')], out);
  const parts = unzipSync(new Uint8Array(readFileSync(join(out, 'cases.xlsx'))));
  rmSync(folder, { recursive: true, force: true });
  const text = (name: string) => (parts[name] ? strFromU8(parts[name]) : '');
  const texts = [...text('xl/sharedStrings.xml').matchAll(/<si>.*?<t[^>]*>(.*?)<\/t>.*?<\/si>/gs)].map((one) =>
    plain(one[1]!),
  );
  const cells = new Map<string, Single>();
  for (const [, attributes, inner] of text('xl/worksheets/sheet1.xml').matchAll(/<c ([^>]*[^/])>(.*?)<\/c>/gs)) {
    const value = /<v>(.*?)<\/v>/s.exec(inner!)?.[1] ?? '';
    cells.set(/r="(\w+)"/.exec(attributes!)![1]!, contentOf(/t="(\w+)"/.exec(attributes!)?.[1], value, texts));
  }
  const version = execFileSync('soffice', ['--version'], { encoding: 'utf8' }).split(' ')[1]!;
  return {
    version,
    values: Object.fromEntries(
      CASES.map(({ formula, rows, columns }, n): [string, Value] => {
        const all = Array.from({ length: rows }, (_, r) =>
          Array.from({ length: columns }, (__, c) => cells.get(`${letter(c)}${ROWS[n]! + r}`) ?? ''),
        );
        return [formula, rows * columns === 1 ? all[0]![0]! : all];
      }),
    ),
  };
}

/** Has LibreOffice calculate the cases anew and keeps its answers. */
export function keepAnswers(): void {
  writeFileSync(FILE, `${JSON.stringify(calculated(), null, 1)}\n`);
}

/** An answer as one reads it, rows parted by semicolons. */
const shown = (value: Value | undefined): string =>
  Array.isArray(value) ? `{${value.map((row) => row.join(', ')).join('; ')}}` : String(value);

/** The section on native functions of docs/exchange.md, and where LibreOffice answers otherwise than it was kept. */
export function natives(): { section: string; failures: readonly string[] } {
  const now = calculated();
  const failures = CASES.filter(() => now.version === answers.version)
    .filter(({ formula }) => shown(now.values[formula]) !== shown(answers.values[formula]))
    .map(
      ({ formula }) =>
        `${formula}: LibreOffice gives ${shown(now.values[formula])}, kept is ${shown(answers.values[formula])}`,
    );
  const names = [...new Set(CASES.map(({ name }) => name))].sort();
  const rows = names.map((name) => {
    const own = CASES.filter((one) => one.name === name);
    const otherwise = own.filter(({ formula }) => OTHERWISE[formula]);
    const remarks = otherwise.map(({ formula }) => {
      const { grid, why } = OTHERWISE[formula]!;
      return `\`${formula.replaceAll('|', '\\|')}\`: grid ${shown(grid)}, LibreOffice ${shown(answers.values[formula])}; ${why}`;
    });
    return `| ${name} | ${own.length} | ${own.length - otherwise.length} | ${remarks.join('<br>')} |`;
  });
  const head = `## Native functions: the grid and LibreOffice ${answers.version}

${CASES.length} cases of ${names.length} functions, calculated by both; \`npm test\` holds the grid to this table. Answers of several
cells are compared cell by cell, errors by their kind, except that LibreOffice writes the kinds that it alone has as #VALUE!.
Functions that this LibreOffice has not are held against their definitions by \`tests/natives/younger.test.ts\`.

| function | cases | agreeing | remarks |
| --- | --- | --- | --- |`;
  return { section: [head, ...rows].join('\n'), failures };
}
