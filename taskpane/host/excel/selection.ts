import type { CellContent, Selection } from '../host.js';

/** The active cell: it exists even where several areas are selected. */
export const selection = (): Promise<Selection> =>
  Excel.run(async (context) => {
    const cell = context.workbook.getActiveCell();
    cell.load(['address', 'formulas', 'values']);
    cell.worksheet.load('name');
    await context.sync();
    const [[formula]] = cell.formulas as [[unknown]];
    const [[value]] = cell.values as [[CellContent]];
    return {
      sheet: cell.worksheet.name,
      address: cell.address.slice(cell.address.lastIndexOf('!') + 1),
      ...(typeof formula === 'string' && formula.startsWith('=') ? { formula } : {}),
      value: value === '' ? null : value,
    };
  });

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
