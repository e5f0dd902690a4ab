interface Visit {
  readonly id: number;
  readonly next: Iterator<number>;
}

/** Formulas that all lead to each other; one alone is a circle only where it leads to itself. */
export interface Group {
  readonly ids: readonly number[];
  readonly circular: boolean;
}

/**
 * All formulas in groups, what is led to before what leads there (strongly connected components, after R. Tarjan, Depth-first
 * search and linear graph algorithms, SIAM J. Comput. 1 (1972) 146). Without recursion: a chain may be very long.
 */
export function groupsIn(ids: readonly number[], next: (id: number) => readonly number[]): Group[] {
  const order = new Map<number, number>();
  const low = new Map<number, number>();
  const open: number[] = [];
  const isOpen = new Set<number>();
  const groups: Group[] = [];
  const visits: Visit[] = [];
  const least = (id: number, other: number) => low.set(id, Math.min(low.get(id) as number, other));
  const enter = (id: number) => {
    order.set(id, order.size);
    low.set(id, order.size - 1);
    open.push(id);
    isOpen.add(id);
    visits.push({ id, next: next(id)[Symbol.iterator]() });
  };
  const leave = (id: number) => {
    if (low.get(id) !== order.get(id)) return;
    const group = open.splice(open.lastIndexOf(id));
    for (const one of group) isOpen.delete(one);
    groups.push({ ids: group, circular: group.length > 1 || next(id).includes(id) });
  };
  for (const start of ids) {
    if (!order.has(start)) enter(start);
    for (let visit = visits.at(-1); visit; visit = visits.at(-1)) {
      const { done, value } = visit.next.next();
      if (done) {
        visits.pop();
        leave(visit.id);
        const before = visits.at(-1);
        if (before) least(before.id, low.get(visit.id) as number);
      } else if (!order.has(value)) enter(value);
      else if (isOpen.has(value)) least(visit.id, order.get(value) as number);
    }
  }
  return groups;
}
