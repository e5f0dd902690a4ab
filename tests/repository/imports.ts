/** The shortest way from a file back to itself through what the files import, or nothing. */
function circleThrough(start: string, imports: ReadonlyMap<string, readonly string[]>): string[] | undefined {
  const before = new Map<string, string>();
  const queue = [start];
  for (const file of queue) {
    for (const next of imports.get(file) ?? []) {
      if (next === start) {
        const way = [start];
        for (let step = file; step !== start; step = before.get(step)!) way.unshift(step);
        return [start, ...way];
      }
      if (before.has(next)) continue;
      before.set(next, file);
      queue.push(next);
    }
  }
  return undefined;
}

/** Circles of imports, each once, as the files along the way. */
export function circles(imports: ReadonlyMap<string, readonly string[]>): string[][] {
  const found = new Map<string, string[]>();
  for (const file of imports.keys()) {
    const circle = circleThrough(file, imports);
    if (circle) found.set([...new Set(circle)].sort().join(), circle);
  }
  return [...found.values()];
}
