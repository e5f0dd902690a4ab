import type { FakeArea, FakeBook } from './fakeBook.js';

/** The tables of the fake workbook. It refers to nothing outside itself, so that a browser can be given its source. */
export function tablesOf(book: FakeBook, named: (find: () => FakeArea | undefined) => object) {
  return {
    getItemOrNullObject: (name: string) => {
      const area = (): FakeArea | undefined => book.tables.get(name)?.area;
      const columnOf = (title: string) => (): FakeArea | undefined => {
        const [sheet, row, column, rows] = area() ?? [];
        const index = book.tables.get(name)?.columns.indexOf(title) ?? -1;
        return sheet === undefined || index < 0 ? undefined : [sheet, row ?? 0, (column ?? 0) + index, rows ?? 0, 1];
      };
      return Object.assign(named(area), {
        columns: { getItemOrNullObject: (title: string) => named(columnOf(title)) },
      });
    },
  };
}
