import type { FakeSheet, Queue } from './fakeBook.js';

/**
 * What of the fake workbook only takes what is set: a sheet's print set-up, conditional formats and charts. It refers
 * to nothing outside itself, so that a browser can be given its source.
 */
export function recorded(queue: Queue, sheet: () => FakeSheet) {
  /** Records whatever is set on the way down, by its path, once the context is synchronised. */
  const recorder = (into: () => Record<string, unknown>, path = ''): Record<string, unknown> =>
    new Proxy({} as Record<string, unknown>, {
      get: (_, name) =>
        name === 'setSolidColor'
          ? (color: string) => queue.push(() => Object.assign(into(), { [`${path}color`]: color }))
          : recorder(into, `${path}${String(name)}.`),
      set: (_, name, value) => {
        queue.push(() => Object.assign(into(), { [path + String(name)]: value }));
        return true;
      },
    });
  /** The same with members of its own. */
  const recorderWith = (members: Record<string, unknown>, into: () => Record<string, unknown>, path = '') =>
    new Proxy(recorder(into, path), {
      get: (rest, name) => members[String(name)] ?? rest[String(name)],
    });

  const addChart = (type: string, from: { a1: string }, by: string) => {
    const set: Record<string, unknown> = { type, from: from.a1, by };
    queue.push(() => sheet().charts.push(set));
    let count = 1;
    const series = (index: number) => {
      const range = (what: string) => (one: { a1: string }) =>
        queue.push(() => Object.assign(set, { [`series.${index}.${what}`]: one.a1 }));
      return recorderWith(
        { setXAxisValues: range('across'), setValues: range('upwards') },
        () => set,
        `series.${index}.`,
      );
    };
    const setPosition = (first: string, last: string) =>
      queue.push(() => Object.assign(set, { place: `${first}:${last}` }));
    return recorderWith({ series: { getItemAt: series, add: () => series(count++) }, setPosition }, () => set);
  };

  const setPrintTitleRows = (rows: string) => queue.push(() => Object.assign(sheet(), { printed: rows }));
  const set = (what: string) => (value: unknown) => queue.push(() => Object.assign(sheet().page, { [what]: value }));
  const setPrintMargins = (unit: string, margins: object) => set('margins')({ unit, ...margins });
  const setPrintArea = ({ a1 }: { a1: string }) => set('areas')(a1.split(','));
  const breaks = (what: string) => ({
    add: (place: string) =>
      queue.push(() => {
        const { page } = sheet();
        page[what] = [...((page[what] as string[]) ?? []), place];
      }),
  });
  /** Several places at once: what is set or done, is set and done in each. */
  const several = (places: readonly Record<string, unknown>[], a1 = ''): Record<string, unknown> =>
    new Proxy({} as Record<string, unknown>, {
      get: (_, name) => {
        if (name === 'a1') return a1;
        const members = places.map((place) => place[String(name)]);
        if (typeof members[0] !== 'function') return several(members as Record<string, unknown>[]);
        return (...given: unknown[]) =>
          several(members.map((member, index) => (member as (...all: unknown[]) => never).apply(places[index], given)));
      },
      set: (_, name, value) => {
        for (const place of places) place[String(name)] = value;
        return true;
      },
    });

  return {
    several,
    charts: { add: addChart },
    pageLayout: recorderWith(
      { setPrintTitleRows, setPrintTitleColumns: set('columns'), setPrintMargins, setPrintArea },
      () => sheet().page,
    ),
    horizontalPageBreaks: breaks('rowBreaks'),
    verticalPageBreaks: breaks('columnBreaks'),
    conditionsOf: (range: string) => ({
      add: (kind: string) => {
        const set: Record<string, unknown> = { kind, range };
        queue.push(() => sheet().conditions.push(set));
        return { custom: recorder(() => set) };
      },
    }),
  };
}
