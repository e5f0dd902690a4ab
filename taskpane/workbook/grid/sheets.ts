import type { StarterSheet } from '../../../src/sheets/sheet.js';
import { freeSheetName } from '../../host/sheetName.js';
import type { Texts } from '../../texts/texts.js';
import { ICommandService, type IWorksheetData } from '../engine/core.js';
import type { FWorksheet } from '../engine/facade.js';
import { servicesOf } from '../engine/services.js';
import type { Grid } from './boot.js';
import { setRules } from './judging.js';
import { workbookOf } from './place.js';
import { blankSheet, sheetData } from './workbookData.js';

export type NameRefusal = (words: Texts['workbook']['tabs']) => string;

/** What spreadsheet programs agree on. */
const LONGEST = 31;
const FORBIDDEN = '[]:*?/\\';

const newId = () => crypto.randomUUID();
const names = (grid: Grid) =>
  workbookOf(grid)
    .getSheets()
    .map((sheet) => sheet.getSheetName());

/** The first of a row of names that no sheet has yet. */
function freeName(grid: Grid, nameOf: (number: number) => string): string {
  const taken = new Set(names(grid).map((name) => name.toLowerCase()));
  let number = 1;
  while (taken.has(nameOf(number).toLowerCase())) number += 1;
  return nameOf(number);
}

/** Names point at the sheet that brought them first; a second copy leaves them there. */
export function defineNames(grid: Grid, sheet: FWorksheet, { names: defined }: StarterSheet) {
  const workbook = workbookOf(grid);
  const quoted = `'${sheet.getSheetName().replaceAll("'", "''")}'`;
  for (const [name, cell] of Object.entries(defined)) {
    const absolute = cell.replace(/\$?([A-Z]+)\$?(\d+)/g, '$$$1$$$2');
    if (!workbook.getDefinedName(name)) workbook.insertDefinedName(name, `${quoted}!${absolute}`);
  }
}

/** What a starter sheet brings with it besides its cells. */
export function completeStarter(grid: Grid, sheet: FWorksheet, starter: StarterSheet): void {
  defineNames(grid, sheet, starter);
  const commands = servicesOf(grid.univer).get(ICommandService);
  setRules(commands, workbookOf(grid).getId(), sheet.getSheetId(), starter);
}

export function insertStarter(grid: Grid, starter: StarterSheet): FWorksheet {
  const name = freeName(grid, (number) => (number === 1 ? starter.name : `${starter.name} ${number}`));
  const sheet = workbookOf(grid).insertSheet(name, { sheet: sheetData(starter, newId(), name) });
  completeStarter(grid, sheet, starter);
  return sheet;
}

export function insertBlank(grid: Grid, nameOf: (number: string) => string): FWorksheet {
  const name = freeName(grid, (number) => nameOf(String(number)));
  return workbookOf(grid).insertSheet(name, { sheet: blankSheet(newId(), name) });
}

/** A sheet from a file of rows, under the file's name as far as a sheet can have it. */
export function insertNamed(grid: Grid, file: string, data: Partial<IWorksheetData>): FWorksheet {
  const plain = [...file.replace(/\.[^.]*$/, '')].map((mark) => (FORBIDDEN.includes(mark) ? ' ' : mark)).join('');
  const name = freeSheetName(plain.replace(/^'+|'+$/g, '').trim() || file, names(grid));
  return workbookOf(grid).insertSheet(name, { sheet: { ...blankSheet(newId(), name), ...data } });
}

/** Why a sheet cannot have this name; or nothing. */
export function nameRefusal(grid: Grid, id: string, name: string): NameRefusal | undefined {
  if (name.trim() === '') return ({ noName }) => noName;
  if (name.length > LONGEST) return ({ longName }) => longName(String(LONGEST));
  if ([...FORBIDDEN].some((mark) => name.includes(mark)))
    return ({ markInName }) => markInName([...FORBIDDEN].join(' '));
  const same = workbookOf(grid)
    .getSheets()
    .some((sheet) => sheet.getSheetId() !== id && sheet.getSheetName().toLowerCase() === name.trim().toLowerCase());
  return same ? ({ takenName }) => takenName(name.trim()) : undefined;
}
