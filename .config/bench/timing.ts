/** One row of the table: a piece of work against its reference, both timed in the same run. */
export interface Comparison {
  readonly title: string;
  readonly reference: string;
  readonly aim?: number;
  work(): unknown;
  bare(): unknown;
  /** How often each is called within one timing; short work needs many. */
  readonly calls?: number;
  /** Long work needs fewer rounds than the usual 15. */
  readonly rounds?: number;
}

const ROUNDS = 15;

function collect(): void {
  if (!globalThis.gc) throw new Error('Run this with npm run bench: it needs node --expose-gc.');
  globalThis.gc();
}

function milliseconds(work: () => unknown, calls: number): number {
  collect();
  const start = performance.now();
  for (let call = 0; call < calls; call++) work();
  return (performance.now() - start) / calls;
}

/** The least time over all rounds: everything that disturbs a timing makes it longer. */
function leastTime(work: () => unknown, calls: number, rounds: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let round = 0; round < rounds; round++) least = Math.min(least, milliseconds(work, calls));
  return least;
}

/** Times a piece of work between two timings of its reference, so that a change of the machine's pace shows less. */
export function compare({ title, reference, aim, work, bare, calls = 1, rounds = ROUNDS }: Comparison): string {
  const before = leastTime(bare, calls, rounds);
  const least = leastTime(work, calls, rounds);
  const leastBare = Math.min(before, leastTime(bare, calls, rounds));
  const ratio = (least / leastBare).toFixed(2);
  const shown = (time: number) => (time < 0.1 ? `${(1000 * time).toFixed(1)} µs` : `${time.toFixed(2)} ms`);
  return `| ${title} | ${shown(least)} | ${reference} | ${shown(leastBare)} | ${ratio} | ${aim ?? ''} |`;
}

export const HEADER = [
  '| work | least time | reference | least time | ratio | aim |',
  '| --- | --- | --- | --- | --- | --- |',
].join('\n');
