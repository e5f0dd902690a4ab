import type { FakeBook, FakeSheet, Queue } from './fakeBook.js';
import type { fakeRange as FakeRange } from './fakeRange.js';
import type { loadable as Loadable } from './loadable.js';

export interface FakeParts {
  readonly loadable: typeof Loadable;
  readonly fakeRange: typeof FakeRange;
}

/**
 * A workbook with just the members of Excel's API that the host uses. It keeps the API's order: nothing can be
 * read before it was loaded and the context synchronised, and nothing is written before then either. It refers to
 * nothing outside itself, so that a browser can be given its source.
 */
export function fakeExcel({ loadable, fakeRange }: FakeParts) {
  const coded = (code: string, message = code) => Object.assign(new Error(message), { code });
  const number = (word: string) => [...word].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  const blankSheet = (): FakeSheet => ({
    contents: new Map(),
    results: new Map(),
    formats: new Map(),
    validations: new Map(),
    looks: new Map(),
    widths: new Map(),
    names: new Map(),
    frozen: 0,
    printed: '',
  });
  const handlers = new Set<() => Promise<void>>();
  const tell = async () => {
    for (const handler of handlers) await handler();
  };
  const book: FakeBook = {
    sheets: new Map([['Sheet1', blankSheet()]]),
    active: { sheet: 'Sheet1', row: 0, column: 0 },
    editing: false,
    syncs: 0,
    async select(row, column) {
      book.active = { ...book.active, row, column };
      await tell();
    },
    calculated: tell,
    listeners: () => handlers.size,
  };

  const range = (queue: Queue, where: () => FakeBook['active'], rows: number, columns: number) =>
    fakeRange({ book, loadable, coded }, queue, where, rows, columns);

  function worksheet(queue: Queue, name: string) {
    const sheet = () => book.sheets.get(name) as FakeSheet;
    const cell = (row: number, column: number) => range(queue, () => ({ sheet: name, row, column }), 1, 1);
    return {
      getRange: (a1: string) => {
        const [, column = '', row = ''] = /^([A-Z]+)(\d+)$/.exec(a1) ?? [];
        return Object.assign(cell(Number(row) - 1, number(column)), { a1 });
      },
      getCell: cell,
      names: { add: (key: string, { a1 }: { a1: string }) => queue.push(() => sheet().names.set(key, a1)) },
      freezePanes: { freezeRows: (rows: number) => queue.push(() => Object.assign(sheet(), { frozen: rows })) },
      pageLayout: { setPrintTitleRows: (rows: string) => queue.push(() => Object.assign(sheet(), { printed: rows })) },
      activate: () => queue.push(() => Object.assign(book, { active: { sheet: name, row: 0, column: 0 } })),
      delete: () => queue.push(() => book.sheets.delete(name)),
    };
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
    const worksheets = Object.assign(
      loadable(coded, queue, { 'items/name': () => [...book.sheets.keys()].map((name) => ({ name })) }),
      {
        add: (name: string) => {
          queue.push(() => {
            if (book.sheets.has(name)) throw coded('ItemAlreadyExists');
            book.sheets.set(name, blankSheet());
          });
          return worksheet(queue, name);
        },
        getItem: (name: string) => worksheet(queue, name),
        onChanged: event,
        onCalculated: event,
      },
    );
    Object.defineProperty(worksheets, 'items', { get: () => (worksheets as never)['items/name'] });
    const here = () => book.active;
    return {
      workbook: { getActiveCell: () => range(queue, here, 1, 1), onSelectionChanged: event, worksheets },
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
    context: { contentLanguage: 'en-GB', displayLanguage: 'en-GB' },
    onReady: async () => ({ host: 'Excel', platform: 'OfficeOnline' }),
  };
  return { book, Excel, Office };
}
