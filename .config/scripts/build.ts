import { build, type Part, parts } from '../bundle.js';

// npm run build            everything
// npm run build functions  one part, without waiting for the others
const named = process.argv.slice(2);
const unknown = named.filter((name) => !parts.includes(name as Part));
if (unknown.length > 0) {
  console.error(`No such part: ${unknown.join(', ')}. The parts are ${parts.join(', ')}.`);
  process.exit(1);
}

const started = performance.now();
try {
  console.log(await build(named.length > 0 ? (named as Part[]) : parts));
  console.log(`in ${((performance.now() - started) / 1000).toFixed(1)} s`);
} catch (failure) {
  console.error(failure instanceof Error ? failure.message : failure);
  process.exit(1);
}
