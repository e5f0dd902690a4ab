import type { Coded, Queue } from './fakeBook.js';

/** An object whose properties can be read once loaded and synchronised; writing waits for synchronisation too. */
export function loadable<R extends Record<string, () => unknown>>(
  coded: Coded,
  queue: Queue,
  reads: R,
  writes: Partial<Record<string, (value: never) => void>> = {},
) {
  const ready = new Map<string, unknown>();
  const object = {
    load(names: string | readonly string[]) {
      for (const name of [names].flat()) {
        const read = reads[name as string];
        if (!read) throw new Error(`The fake has no property ${name} to load.`);
        queue.push(() => ready.set(name as string, read()));
      }
    },
  };
  for (const name of new Set([...Object.keys(reads), ...Object.keys(writes)])) {
    Object.defineProperty(object, name, {
      get: () => {
        if (!ready.has(name)) throw coded('PropertyNotLoaded', `${name} was read before it was loaded.`);
        return ready.get(name);
      },
      set: (value: never) => {
        const write = writes[name];
        if (!write) throw new Error(`The fake cannot set ${name}.`);
        queue.push(() => write(value));
      },
    });
  }
  return object as typeof object & { [K in keyof R]: ReturnType<R[K]> };
}
