import { builtFunctions } from '../bench/builtFunctions.js';
import { columns } from '../bench/columns.js';
import { fits } from '../bench/fits.js';
import { plans } from '../bench/plans.js';
import { spread } from '../bench/spread.js';
import { compare, HEADER } from '../bench/timing.js';
import { build } from '../bundle.js';

// Each row is a ratio measured in one run: the work is timed between two timings of its reference, and the least time counts.
console.log(await build(['functions']));
const fn = builtFunctions();
console.log(HEADER);
for (const comparison of [...columns(fn), ...fits(fn), ...plans(fn), ...spread(fn)]) console.log(compare(comparison));
