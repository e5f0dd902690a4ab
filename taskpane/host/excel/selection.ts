import { filledBy } from '../filledBy.js';
import type { CellContent, Selection } from '../host.js';

/** Where a formula's answer spills to is known from this version of Excel on. */
const knowsSpills = () => Office.context.requirements.isSetSupported('ExcelApi', '1.12');

const PLACE = ['rowIndex', 'columnIndex'];

/** The active cell: it exists even where several areas are selected. */
export const selection = (): Promise<Selection> =>
  Excel.run(async (context) => {
    const cell = context.workbook.getActiveCell();
    cell.load(['address', 'formulas', 'values', ...PLACE]);
    cell.worksheet.load('name');
    const anchor = knowsSpills() ? cell.getSpillParentOrNullObject() : undefined;
    anchor?.load(['isNullObject', 'formulas', ...PLACE]);
    await context.sync();
    const [[value]] = cell.values as [[CellContent]];
    return {
      sheet: cell.worksheet.name,
      address: cell.address.slice(cell.address.lastIndexOf('!') + 1),
      ...origin(cell, anchor),
      value: value === '' ? null : value,
    };
  });

/** The cell's own formula, or the one that spills into it. */
function origin(cell: Excel.Range, anchor: Excel.Range | undefined): Pick<Selection, 'formula' | 'spilledFrom'> {
  const spills = anchor && !anchor.isNullObject ? anchor : cell;
  const [[formula]] = spills.formulas as [[unknown]];
  if (typeof formula !== 'string' || !formula.startsWith('=')) return {};
  const placeOf = ({ rowIndex, columnIndex }: Excel.Range) => ({ row: rowIndex, column: columnIndex });
  return filledBy(cell.worksheet.name, placeOf(cell), placeOf(spills), formula);
}

type Stop = () => Promise<void>;

async function register(changed: () => Promise<void>): Promise<Stop> {
  return Excel.run(async (context) => {
    const { workbook } = context;
    const handlers = [
      workbook.onSelectionChanged.add(changed),
      workbook.worksheets.onChanged.add(changed),
      workbook.worksheets.onCalculated.add(changed),
    ];
    await context.sync();
    return () =>
      Excel.run(context, async (same) => {
        for (const handler of handlers) handler.remove();
        await same.sync();
      });
  });
}

/** Reads anew at each event; events that come while a reading is under way ask for one more, not for many. */
export function onSelection(listener: (selection: Selection) => void): () => void {
  let stopped = false;
  let reading = false;
  let again = false;
  const changed = async (): Promise<void> => {
    again = true;
    if (reading) return;
    reading = true;
    while (again && !stopped) {
      again = false;
      // Excel cannot be read while a cell is edited; the event at the end of the entry comes here again.
      const read = await selection().catch(() => undefined);
      if (read && !stopped) listener(read);
    }
    reading = false;
  };
  const registered = register(changed);
  registered.catch(() => {});
  return () => {
    stopped = true;
    registered.then((stop) => stop()).catch(() => {});
  };
}
