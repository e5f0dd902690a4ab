import type { SheetCell, StarterSheet } from '../../../src/sheets/sheet.js';
import { sharing } from './areas.js';
import { addCharts } from './charts.js';
import { setConditions } from './conditions.js';
import { contentOf, rectangle } from './contents.js';
import { dress } from './looks.js';
import { points } from './points.js';
import { setUpPrinting } from './printing.js';
import { validate } from './validate.js';

/** The name itself, or with the first number that is free. */
function freeName(name: string, taken: readonly string[]): string {
  const used = new Set(taken.map((one) => one.toLowerCase()));
  for (let number = 1; ; number++) {
    const candidate = number === 1 ? name : `${name} (${number})`;
    if (!used.has(candidate.toLowerCase())) return candidate;
  }
}

type Row = readonly SheetCell[];

/**
 * Queues contents and formats of a sheet as one block each, looks and limits once for all cells that share them: Excel in
 * a browser takes no request above five megabytes, and each cell that is spoken of by itself costs thousands of letters.
 */
function fill(sheet: Excel.Worksheet, cells: readonly Row[]): void {
  // Formats first: what is to be a text must not be read as a number.
  const range = sheet.getRange('A1').getResizedRange(cells.length - 1, (cells[0]?.length ?? 1) - 1);
  range.numberFormat = cells.map((row) => row.map(({ format }) => format ?? 'General'));
  range.formulas = cells.map((row) => row.map((cell) => contentOf(cell, cell.formula)));
  for (const { same, shape, addresses } of sharing(cells, ({ style, align }) => style && { style, align })) {
    for (const several of addresses) dress(sheet.getRanges(several), same.style, same.align, shape);
  }
  for (const { same, addresses } of sharing(cells, ({ validation, note }) => validation && { validation, note })) {
    for (const several of addresses) validate(sheet.getRanges(several), same.validation, same.note);
  }
}

/** Builds a starter sheet as a new tab, and shows it. A tab left half built by a failure is taken away again. */
export async function insertSheet(starter: StarterSheet): Promise<void> {
  const { name, widths, rows, names, headerRows, labelColumns = 0, conditions = [], charts = [] } = starter;
  let added = '';
  try {
    await Excel.run(async (context) => {
      const { worksheets } = context.workbook;
      worksheets.load('items/name');
      await context.sync();
      const free = freeName(
        name,
        worksheets.items.map((one) => one.name),
      );
      const sheet = worksheets.add(free);
      await context.sync();
      added = free;
      fill(sheet, rectangle(rows, {}));
      for (const [column, width] of widths.entries()) {
        sheet.getCell(0, column).format.columnWidth = points(width);
      }
      // Names of this sheet only, so that a second copy can have its own.
      for (const [key, address] of Object.entries(names)) sheet.names.add(key, sheet.getRange(address));
      if (headerRows > 0 && labelColumns > 0)
        sheet.freezePanes.freezeAt(sheet.getRangeByIndexes(0, 0, headerRows, labelColumns));
      else if (headerRows > 0) sheet.freezePanes.freezeRows(headerRows);
      setUpPrinting(sheet, starter);
      setConditions(sheet, conditions);
      addCharts(sheet, charts);
      sheet.activate();
      await context.sync();
    });
  } catch (error) {
    if (added) await takeAway(added);
    throw error;
  }
}

/** Deletes a sheet that a failure left half made; that this fails too is not worth a second sentence. */
export const takeAway = (name: string): Promise<void> =>
  Excel.run(async (context) => {
    context.workbook.worksheets.getItem(name).delete();
    await context.sync();
  }).catch(() => {});
