import type { Coded, Queue } from './fakeBook.js';

/** A list whose members can be walked through once it is loaded and synchronised. */
export function collection<T>(coded: Coded, queue: Queue, list: () => readonly T[]) {
  let items: readonly T[] | undefined;
  return {
    load: () =>
      queue.push(() => {
        items = list();
      }),
    get items(): readonly T[] {
      if (!items) throw coded('PropertyNotLoaded', 'A list was read before it was loaded.');
      return items;
    },
  };
}
