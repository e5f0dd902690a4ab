import fc from 'fast-check';
import { bindAll } from '../../functions/bind.js';
import { catalogue } from '../../src/catalogue.js';
import { answers } from '../../tests/functions/answers.js';
import { callsOf } from '../../tests/hostile/calls.js';
import { faultOf } from '../../tests/hostile/judgement.js';
import { watchdog } from './watchdog.js';

// Hostile calls of every function, or of those named, for as long as one likes:
//   npm run fuzz -- 30m        npm run fuzz -- 90s FITRUN        npm run fuzz -- --seed 7 DRYMASS
// A given seed makes one round, so that what was found comes back.

const SECONDS = { s: 1, m: 60, h: 3600 } as const;
const CASES = 200;

function reading(words: readonly string[]) {
  const read = { seconds: 60, seed: undefined as number | undefined, ids: [] as string[] };
  const rest = [...words];
  for (let word = rest.shift(); word !== undefined; word = rest.shift()) {
    const time = /^(\d+(?:\.\d+)?)([smh])$/.exec(word);
    const number = () => {
      const value = Number(rest.shift());
      if (Number.isFinite(value)) return value;
      throw new Error(`${word} needs a number behind it.`);
    };
    if (time) read.seconds = Number(time[1]) * SECONDS[time[2] as keyof typeof SECONDS];
    else if (word === '--minutes') read.seconds = number() * 60;
    else if (word === '--seed') read.seed = number();
    else if (catalogue.some(({ id }) => id === word.toUpperCase())) read.ids.push(word.toUpperCase());
    else throw new Error(`${word} is neither a time such as 30m nor the id of a function.`);
  }
  return read;
}

const functions = bindAll(answers);

/** One lot of cases of one function: the shrunk counterexample in words, or nothing. */
function lot(calculation: (typeof catalogue)[number], seed: number): string | undefined {
  const fn = functions.get(calculation.id) as NonNullable<ReturnType<typeof functions.get>>;
  const property = fc.property(callsOf(calculation), (args) => {
    const fault = faultOf(fn, args);
    if (fault !== undefined) throw new Error(fault);
  });
  const { failed, counterexample, errorInstance } = fc.check(property, { seed, numRuns: CASES });
  if (!failed) return undefined;
  const [args = []] = counterexample ?? [];
  const fault = faultOf(fn, args) ?? String(errorInstance);
  return `${calculation.id}: ${fault}\n  arguments: ${fc.stringify(args).slice(0, 2000)}\n  again with: npm run fuzz -- --seed ${seed} ${calculation.id}`;
}

try {
  const { seconds, seed: given, ids } = reading(process.argv.slice(2));
  const chosen = catalogue.filter(({ id }) => ids.length === 0 || ids.includes(id));
  const first = given ?? Math.floor(Math.random() * 2 ** 31);
  console.log(`Seed ${first}; ${chosen.length} functions${given === undefined ? ` for ${seconds} s` : ', one round'}.`);
  const found = new Map<string, string>();
  const begins = watchdog(chosen.map(({ id }) => id));
  const started = performance.now();
  const goesOn = () => given === undefined && performance.now() - started < seconds * 1000;
  const minutes = () => (performance.now() - started) / 60_000;
  const soFar = () => {
    const each = (round * CASES).toLocaleString('en-GB');
    return `${each} cases of each function in ${minutes().toFixed(1)} min: ${found.size} of ${chosen.length} functions failed.`;
  };
  let round = 0;
  let told = 0;
  do {
    for (const calculation of chosen) {
      // A function that failed is left alone: it would only fail again.
      if (found.has(calculation.id)) continue;
      begins(calculation.id, (first + round) | 0);
      const fault = lot(calculation, (first + round) | 0);
      if (fault === undefined) continue;
      found.set(calculation.id, fault);
      console.error(fault);
    }
    round++;
    // Whoever stops a long run early still knows what it has tried.
    if (minutes() - told >= 1) {
      told = minutes();
      console.log(soFar());
    }
  } while (goesOn() && found.size < chosen.length);
  console.log(`Done. ${soFar()}`);
  process.exit(found.size > 0 ? 1 : 0);
} catch (failure) {
  console.error(failure instanceof Error ? failure.message : failure);
  process.exit(2);
}
