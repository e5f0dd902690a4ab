/** One row of the table: a piece of work against its reference, both timed in the same run. */
export interface Comparison {
  readonly title: string;
  readonly reference: string;
  readonly aim?: number;
  work(): unknown;
  bare(): unknown;
  /** How often each is called within one timing; short work needs many. */
  readonly calls?: number;
  /** Long work needs fewer rounds than the usual 25. */
  readonly rounds?: number;
}

/** What a row says, in milliseconds a call. */
export interface Row {
  readonly title: string;
  readonly time: number;
  readonly reference: string;
  readonly referenceTime: number;
  readonly aim?: number | undefined;
}

const ROUNDS = 25;
/** How long both sides run before the first timing counts, so that each is measured with its compiled code. */
const WARMING = 400;

function collect(): void {
  if (!globalThis.gc) throw new Error('Run this with npm run bench: it needs node --expose-gc.');
  globalThis.gc();
}

function warm(work: () => unknown): void {
  const start = performance.now();
  do work();
  while (performance.now() - start < WARMING);
}

function milliseconds(work: () => unknown, calls: number): number {
  collect();
  const start = performance.now();
  for (let call = 0; call < calls; call++) work();
  return (performance.now() - start) / calls;
}

/** The least time over all rounds: everything that disturbs a timing makes it longer. */
export function leastTime(work: () => unknown, calls = 1, rounds = ROUNDS): number {
  warm(work);
  let least = Number.POSITIVE_INFINITY;
  for (let round = 0; round < rounds; round++) least = Math.min(least, milliseconds(work, calls));
  return least;
}

/** Times a piece of work and its reference in turn, so that a change of the machine's pace touches both. */
export function compare({ title, reference, aim, work, bare, calls = 1, rounds = ROUNDS }: Comparison): Row {
  warm(bare);
  warm(work);
  let [time, referenceTime] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let round = 0; round < rounds; round++) {
    referenceTime = Math.min(referenceTime, milliseconds(bare, calls));
    time = Math.min(time, milliseconds(work, calls));
  }
  return { title, time, reference, referenceTime, aim };
}
