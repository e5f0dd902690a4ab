import { existsSync, readFileSync } from 'node:fs';
import { path } from '../paths.js';

// Ends .ci/run with the one line that counts everything. Words: how the tests and the checks ended (their exit codes),
// then how many of the caller's own steps passed and failed.

type Counts = { passed: number; failed: number };

const read = (name: string): Record<string, number> => {
  const file = path('reports', name);
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : {};
};

/** Whatever ended badly counts as a failure, even where it died before it could count or counted none. */
const judged = ({ passed, failed }: Counts, code: number): Counts => ({
  passed,
  failed: failed || (code !== 0 || passed === 0 ? 1 : 0),
});

const [testsCode = 1, checkCode = 1, passed = 0, failed = 0] = process.argv.slice(2).map(Number);
const { numPassedTests = 0, numFailedTests = 0 } = read('tests.json');
const { passed: checked = 0, failed: unchecked = 0 } = read('check.json');

const all = [
  judged({ passed: numPassedTests, failed: numFailedTests }, testsCode),
  judged({ passed: checked, failed: unchecked }, checkCode),
  { passed, failed },
];
const sum = (of: keyof Counts) => all.reduce((total, counts) => total + counts[of], 0);

console.log(`${sum('passed')} passed, ${sum('failed')} failed`);
process.exit(sum('failed') > 0 ? 1 : 0);
