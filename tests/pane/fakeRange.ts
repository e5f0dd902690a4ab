import type { Coded, FakeBook, FakeSheet, Queue } from './fakeBook.js';
import type { loadable as Loadable } from './loadable.js';

export interface RangeTools {
  readonly book: FakeBook;
  readonly loadable: typeof Loadable;
  readonly coded: Coded;
}

/** A rectangle of the fake workbook. What it needs is handed over, so that a browser can be given its source. */
export function fakeRange(
  tools: RangeTools,
  queue: Queue,
  where: () => { sheet: string; row: number; column: number },
  rows: number,
  columns: number,
) {
  const { book, loadable, coded } = tools;
  const letters = (column: number): string =>
    (column < 26 ? '' : letters(Math.floor(column / 26) - 1)) + String.fromCharCode(65 + (column % 26));
  const sheet = () => book.sheets.get(where().sheet) as FakeSheet;
  const key = (row: number, column: number) => `${where().row + row},${where().column + column}`;
  const each = <T>(one: (key: string) => T): T[][] =>
    Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (__, column) => one(key(row, column))));
  const put = <T>(map: () => Map<string, T>, values: readonly (readonly T[])[]) => {
    if (values.length !== rows || values.some((line) => line.length !== columns)) throw coded('InvalidArgument');
    for (const [row, line] of values.entries()) {
      for (const [column, value] of line.entries()) {
        if (value === '') map().delete(key(row, column));
        else map().set(key(row, column), value);
      }
    }
  };
  const place = (row: number, column: number) => `${letters(column)}${row + 1}`;
  const address = () => {
    const { sheet: name, row, column } = where();
    if (row + rows > 1_048_576 || column + columns > 16_384) throw coded('InvalidArgument');
    const end = rows * columns === 1 ? '' : `:${place(row + rows - 1, column + columns - 1)}`;
    return `'${name}'!${place(row, column)}${end}`;
  };
  /** Records whatever is set on the way down, so that the look of every cell can be asked for. */
  const look = (path: string): Record<string, unknown> =>
    new Proxy({} as Record<string, unknown>, {
      get: (_, name) =>
        name === 'getItem' ? (edge: string) => look(`${path}${edge}.`) : look(`${path}${String(name)}.`),
      set: (_, name, value) => {
        queue.push(() =>
          each((cell) => sheet().looks.set(cell, { ...sheet().looks.get(cell), [path + String(name)]: value })),
        );
        return true;
      },
    });
  const format = loadable(
    coded,
    queue,
    { columnWidth: () => sheet().widths.get(where().column) ?? 48 },
    { columnWidth: (width: number) => each((cell) => sheet().widths.set(Number(cell.split(',')[1]), width)) },
  );
  const recording = look('');
  const dataValidation = new Proxy({} as Record<string, unknown>, {
    set: (_, name, value) => {
      queue.push(() =>
        each((cell) => sheet().validations.set(cell, { ...sheet().validations.get(cell), [String(name)]: value })),
      );
      return true;
    },
  });
  const content = (cell: string) => sheet().contents.get(cell) ?? '';
  const shown = (cell: string) => {
    const held = content(cell);
    if (typeof held === 'string' && held.startsWith('=')) return sheet().results.get(cell) ?? 0;
    return typeof held === 'string' ? held.replace(/^'/, '') : held;
  };
  const own = loadable(
    coded,
    queue,
    {
      address,
      isNullObject: () => false,
      rowCount: () => rows,
      columnCount: () => columns,
      rowIndex: () => where().row,
      columnIndex: () => where().column,
      formulas: () => {
        address();
        return each(content);
      },
      values: () => each(shown),
    },
    {
      formulas: (values: never) => put(() => sheet().contents, values),
      numberFormat: (values: never) => put(() => sheet().formats, values),
    },
  );
  return Object.assign(own, {
    format: Object.assign(format, { font: recording.font, fill: recording.fill, borders: recording.borders }),
    dataValidation,
    worksheet: Object.assign(loadable(coded, queue, { name: () => where().sheet }), {
      activate: () => queue.push(() => Object.assign(book.active, { sheet: where().sheet })),
    }),
    select: () =>
      queue.push(() => {
        book.active = { ...where() };
      }),
    /** The fake's own: what the cells show at this moment. */
    shownNow: () => each(shown),
    copyFrom: (from: { shownNow(): never[][] }, what: 'Values') =>
      queue.push(() => {
        if (what !== 'Values') throw coded('InvalidArgument');
        put(() => sheet().contents, from.shownNow());
      }),
    getResizedRange: (down: number, right: number): unknown =>
      fakeRange(tools, queue, where, rows + down, columns + right),
    getCell: (row: number, column: number): unknown =>
      fakeRange(tools, queue, () => ({ ...where(), row: where().row + row, column: where().column + column }), 1, 1),
    getSpillingToRangeOrNullObject: (): unknown => {
      const [down, right] = sheet().spills.get(key(0, 0)) ?? [];
      const missing = loadable(coded, queue, { isNullObject: () => true });
      return down && right ? fakeRange(tools, queue, where, down, right) : missing;
    },
    getSpillParentOrNullObject: (): unknown => {
      const anchor = () => {
        if (!book.knowsSpills) throw coded('ApiNotFound');
        return [...sheet().spills].find(([from, [down, right]]) => {
          const [top = 0, left = 0] = from.split(',').map(Number);
          const { row, column } = where();
          return row >= top && row < top + down && column >= left && column < left + right;
        })?.[0];
      };
      const place = () => (anchor() ?? '0,0').split(',').map(Number) as [number, number];
      return loadable(coded, queue, {
        isNullObject: () => anchor() === undefined,
        rowIndex: () => place()[0],
        columnIndex: () => place()[1],
        formulas: () => [[sheet().contents.get(place().join()) ?? '']],
      });
    },
    getColumn: (column: number): unknown =>
      fakeRange(tools, queue, () => ({ ...where(), column: where().column + column }), rows, 1),
  });
}
