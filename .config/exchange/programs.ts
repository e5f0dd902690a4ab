import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Fact } from '../../tests/exchange/facts/fact.js';
import { path } from '../paths.js';

/** The library of another language that reads and writes workbooks. */
const PYTHON = '/usr/bin/python3';
const SCRIPT = path('tests/exchange/openpyxl_files.py');
const MOST = 256 * 1024 * 1024;

const run = (command: string, words: readonly string[]): string =>
  execFileSync(command, words, {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'pipe'],
    timeout: 300_000,
    maxBuffer: MOST,
  });

/** Whether the programs that the comparison needs are on this machine. */
export function hasPrograms(): boolean {
  try {
    run('soffice', ['--version']);
    run(PYTHON, ['-c', 'import openpyxl']);
    return true;
  } catch {
    return false;
  }
}

export const makeByOpenpyxl = (folder: string): string => run(PYTHON, [SCRIPT, 'make', folder]);

/** What openpyxl reads in files, by file. */
export function factsByOpenpyxl(files: readonly string[]): ReadonlyMap<string, readonly Fact[]> {
  const told = JSON.parse(run(PYTHON, [SCRIPT, 'facts', ...files])) as Record<string, [Fact['kind'], string, string][]>;
  return new Map(
    Object.entries(told).map(([file, facts]) => [file, facts.map(([kind, where, what]) => ({ kind, where, what }))]),
  );
}

/** Makes LibreOffice calculate every formula of a file anew, whatever the file says. */
const ALWAYS = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"><item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item></oor:items>`;

/** Opens files in LibreOffice, calculates them anew and saves them as .xlsx into a folder. */
export function recalculated(files: readonly string[], folder: string): void {
  const profile = join(folder, 'profile');
  mkdirSync(join(profile, 'user'), { recursive: true });
  writeFileSync(join(profile, 'user/registrymodifications.xcu'), ALWAYS);
  run('soffice', [
    '--headless',
    `-env:UserInstallation=file://${profile}`,
    '--convert-to',
    'xlsx:Calc MS Excel 2007 XML',
    '--outdir',
    folder,
    ...files,
  ]);
}
