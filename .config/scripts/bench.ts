import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Script } from 'node:vm';
import { build } from '../bundle.js';
import { dist } from '../paths.js';

// How long the built DRYMASS takes over a column in one call, as a ratio to the same arithmetic without any checks.
// Both read rows of cells and make rows of cells, as the host hands them over and takes them back.

type Cells = unknown[][];
type Bound = (...args: unknown[]) => Cells;

const rows = 100_000;
const rounds = 15;

const collect = globalThis.gc;
if (!collect) throw new Error('Run this with npm run bench: it needs node --expose-gc.');

await build(['functions']);
const bound = new Map<string, Bound>();
class HostError {
  constructor(
    readonly code: string,
    readonly message?: string,
  ) {}
}
Object.assign(globalThis, {
  CustomFunctions: { Error: HostError, associate: (id: string, one: Bound) => bound.set(id, one) },
});
new Script(readFileSync(join(dist, 'functions.js'), 'utf8')).runInThisContext();

const dryMass = bound.get('DRYMASS');
if (!dryMass) throw new Error('The built functions have no DRYMASS.');

const column = (cell: (row: number) => number): number[][] => Array.from({ length: rows }, (_, row) => [cell(row)]);
const masses = column((row) => 10 + (row % 997));
const moistures = column((row) => (row % 89) / 100);
const percentages = column(() => 65);
const negatives = column((row) => -1 - row);

function bare(): Cells {
  const answer: Cells = new Array(rows);
  for (let row = 0; row < rows; row += 1) answer[row] = [masses[row]![0]! * (1 - moistures[row]![0]!)];
  return answer;
}

/** The least time of all rounds: everything that disturbs a timing makes it longer. */
function milliseconds(work: () => Cells): number {
  let least = Number.POSITIVE_INFINITY;
  for (let round = 0; round < rounds; round += 1) {
    collect!();
    const start = performance.now();
    const answer = work();
    least = Math.min(least, performance.now() - start);
    if (answer.length !== rows) throw new Error(`${rows} rows went in, ${answer.length} came out.`);
  }
  return least;
}

const invocation = {};
const cases: Record<string, () => Cells> = {
  'good rows, two columns': () => dryMass(masses, moistures, invocation),
  'good rows, one moisture for all': () => dryMass(masses, [[0.65]], invocation),
  'refused rows, all for one reason': () => dryMass(masses, percentages, invocation),
  'refused rows, each with a sentence of its own': () => dryMass(negatives, moistures, invocation),
};

const base = milliseconds(bare);
console.log(`bare arithmetic over ${rows.toLocaleString('en')} rows: ${base.toFixed(2)} ms`);
for (const [title, work] of Object.entries(cases)) {
  const taken = milliseconds(work);
  console.log(`${title}: ${taken.toFixed(2)} ms, ${(taken / base).toFixed(1)} times bare`);
}
