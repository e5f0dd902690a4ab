import { licenceRefusal, lockedPackages, reasons, tally } from '../licences.js';

// Lists the licences of every package of the lock file, and fails on copyleft and on the unknown. What ends in dist/ is
// judged by the build, which knows it; its notices are in dist/licences.txt.

const packages = lockedPackages();
for (const [licence, count] of tally(packages)) console.log(`${String(count).padStart(5)}  ${licence}`);
console.log('By name, under terms of their own:');
for (const reason of reasons()) console.log(`       ${reason}`);

const refusals = packages.flatMap((one) => licenceRefusal(one, false) ?? []);
for (const refusal of refusals) console.error(refusal);
process.exit(refusals.length > 0 ? 1 : 0);
