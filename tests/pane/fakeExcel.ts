import type { FakeArea, FakeBook, FakeSheet, Queue } from './fakeBook.js';
import type { FakeParts } from './fakeParts.js';

/**
 * A workbook with just the members of Excel's API that the host uses. It keeps the API's order: nothing can be
 * read before it was loaded and the context synchronised, and nothing is written before then either. It refers to
 * nothing outside itself, so that a browser can be given its source.
 */
export function fakeExcel({ loadable, fakeRange, collection, recorded, blankSheet, tablesOf }: FakeParts) {
  const coded = (code: string, message = code) => Object.assign(new Error(message), { code });
  const number = (word: string) => [...word].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  const cellOf = (a1: string) => {
    const [, letters = '', row = ''] = /^([A-Z]+)(\d+)$/.exec(a1) ?? [];
    return { row: Number(row) - 1, column: number(letters) };
  };
  const handlers = new Set<() => Promise<void>>();
  const tell = async () => {
    for (const handler of handlers) await handler();
  };
  const book: FakeBook = {
    sheets: new Map([['Sheet1', blankSheet()]]),
    names: new Map(),
    tables: new Map(),
    active: { sheet: 'Sheet1', row: 0, column: 0 },
    editing: false,
    knowsSpills: true,
    syncs: 0,
    commands: new Map(),
    paneShown: false,
    async select(row, column) {
      book.active = { ...book.active, row, column };
      await tell();
    },
    calculated: tell,
    listeners: () => handlers.size,
  };

  const range = (queue: Queue, where: () => FakeBook['active'], rows: number, columns: number) =>
    Object.assign(fakeRange({ book, loadable, coded }, queue, where, rows, columns), { rows, columns });

  /** A rectangle that the workbook may not have; what it is, is known once it is asked for. */
  const perhaps = (queue: Queue, find: () => FakeArea | undefined) => {
    const [sheet = '', row = 0, column = 0, rows = 1, columns = 1] = find() ?? [];
    const nothing = () => 0;
    const extent = { rowIndex: nothing, columnIndex: nothing, rowCount: nothing, columnCount: nothing };
    const missing = loadable(coded, queue, { ...extent, isNullObject: () => true, values: () => [[]] });
    return find() ? range(queue, () => ({ sheet, row, column }), rows, columns) : missing;
  };
  const named = (queue: Queue, find: () => FakeArea | undefined) =>
    Object.assign(loadable(coded, queue, { isNullObject: () => find() === undefined }), {
      getRangeOrNullObject: () => perhaps(queue, find),
      getDataBodyRange: () => perhaps(queue, find),
    });
  const ownName = (sheet: string, name: string): FakeArea | undefined => {
    const place = book.sheets.get(sheet)?.names.get(name);
    return place === undefined ? undefined : [sheet, cellOf(place).row, cellOf(place).column, 1, 1];
  };
  const usedOf = (name: string): FakeArea | undefined => {
    const places = [...(book.sheets.get(name)?.contents.keys() ?? [])].map((key) => key.split(',').map(Number));
    if (places.length === 0) return undefined;
    const [rows, columns] = [places.map(([row = 0]) => row), places.map(([, column = 0]) => column)];
    const [top, left] = [Math.min(...rows), Math.min(...columns)];
    return [name, top, left, Math.max(...rows) - top + 1, Math.max(...columns) - left + 1];
  };

  const ofSheet = (sheet: string) => () =>
    [...(book.sheets.get(sheet)?.names ?? [])].map(([name, place]) => ({ name, formula: `='${sheet}'!${place}` }));

  function worksheet(queue: Queue, first: string): Record<string, unknown> {
    let name = first;
    const sheet = () => book.sheets.get(name) as FakeSheet;
    const { conditionsOf, several, ...parts } = recorded(queue, sheet);
    const cell = (row: number, column: number) => range(queue, () => ({ sheet: name, row, column }), 1, 1);
    const at = (a1: string) => {
      const [first = '', last = first] = a1.split(':');
      const [from, to] = [cellOf(first), cellOf(last)];
      const [rows, columns] = [to.row - from.row + 1, to.column - from.column + 1];
      const area = range(queue, () => ({ sheet: name, ...from }), rows, columns);
      return Object.assign(area, { a1, conditionalFormats: conditionsOf(a1) });
    };
    const rename = (wanted: string) => {
      book.sheets.set(wanted, sheet());
      book.sheets.delete(name);
      name = wanted;
    };
    const own = loadable(
      coded,
      queue,
      { name: () => name, isNullObject: () => !book.sheets.has(name) },
      { name: rename as never },
    );
    const copy = (_: 'After', beside: { name: string }) => {
      const copied = `${beside.name} copy`;
      queue.push(() => {
        const { contents, results, formats, ...rest } = sheet();
        const maps = { contents: new Map(contents), results: new Map(results), formats: new Map(formats) };
        book.sheets.set(copied, { ...rest, ...maps });
      });
      return worksheet(queue, copied);
    };
    const freeze = ({ rows, columns }: FakeSheet['frozen']) =>
      queue.push(() => Object.assign(sheet(), { frozen: { rows, columns } }));
    return Object.assign(own, {
      copy,
      getRange: at,
      getRanges: (addresses: string) => several(addresses.split(',').map(at), addresses),
      getCell: cell,
      getRangeByIndexes: (row: number, column: number, rows: number, columns: number) =>
        range(queue, () => ({ sheet: name, row, column }), rows, columns),
      getUsedRangeOrNullObject: () => perhaps(queue, () => usedOf(name)),
      names: Object.assign(collection(coded, queue, ofSheet(first)), {
        getItemOrNullObject: (key: string) => named(queue, () => ownName(name, key)),
        add: (key: string, { a1 }: { a1: string }) => queue.push(() => sheet().names.set(key, a1)),
      }),
      freezePanes: { freezeRows: (rows: number) => freeze({ rows, columns: 0 }), freezeAt: freeze },
      ...parts,
      activate: () => queue.push(() => Object.assign(book, { active: { sheet: name, row: 0, column: 0 } })),
      delete: () => queue.push(() => book.sheets.delete(name)),
    });
  }

  function contextOf() {
    const queue: Queue = [];
    const event = {
      add: (handler: () => Promise<void>) => {
        // Each registration counts for itself.
        const own = () => handler();
        queue.push(() => handlers.add(own));
        return { remove: () => queue.push(() => handlers.delete(own)) };
      },
    };
    const present = () => [...book.sheets.keys()].map((name) => Object.assign({}, worksheet(queue, name), { name }));
    const worksheets = Object.assign(collection(coded, queue, present), {
      add: (name: string) => {
        queue.push(() => {
          if (book.sheets.has(name)) throw coded('ItemAlreadyExists');
          book.sheets.set(name, blankSheet());
        });
        return worksheet(queue, name);
      },
      getItem: (name: string) => worksheet(queue, name),
      getItemOrNullObject: (name: string) => worksheet(queue, name),
      onChanged: event,
      onCalculated: event,
      getActiveWorksheet: () => worksheet(queue, book.active.sheet),
    });
    const area = ([sheet, row, column]: FakeArea) => `'${sheet}'!$${String.fromCharCode(65 + column)}$${row + 1}`;
    const ofBook = () => [...book.names].map(([name, place]) => ({ name, formula: `=${area(place)}` }));
    const nameOf = (name: string) => named(queue, () => book.names.get(name));
    const names = Object.assign(collection(coded, queue, ofBook), { getItemOrNullObject: nameOf });
    const tables = tablesOf(book, (find) => named(queue, find));
    return {
      workbook: {
        getActiveCell: () => range(queue, () => book.active, 1, 1),
        onSelectionChanged: event,
        worksheets,
        names,
        tables,
      },
      async sync() {
        book.syncs += 1;
        const work = queue.splice(0);
        if (book.editing) throw coded('InvalidOperationInCellEditMode');
        for (const one of work) one();
      },
    };
  }

  const Excel = {
    async run(first: unknown, second?: (context: unknown) => Promise<unknown>) {
      const context = second ? first : contextOf();
      const batch = (second ?? first) as (context: unknown) => Promise<unknown>;
      const result = await batch(context);
      await (context as { sync(): Promise<void> }).sync();
      return result;
    },
  };
  const Office = {
    HostType: { Excel: 'Excel' },
    context: {
      contentLanguage: 'en-GB',
      displayLanguage: 'en-GB',
      requirements: { isSetSupported: () => book.knowsSpills },
    },
    actions: { associate: book.commands.set.bind(book.commands) },
    addin: {
      showAsTaskpane: async () => {
        book.paneShown = true;
      },
    },
    onReady: async () => ({ host: 'Excel', platform: 'OfficeOnline' }),
  };
  return { book, Excel, Office };
}
