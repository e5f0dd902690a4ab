import { builtFunctions } from '../bench/builtFunctions.js';
import { calls } from '../bench/calls.js';
import { columns } from '../bench/columns.js';
import { fits } from '../bench/fits.js';
import { plans } from '../bench/plans.js';
import { spread } from '../bench/spread.js';
import { comparisonTable } from '../bench/table.js';
import { compare } from '../bench/timing.js';
import { build } from '../bundle.js';

console.log(await build(['functions']));
const fn = builtFunctions();
const work = [...calls(fn), ...columns(fn), ...fits(fn), ...plans(fn), ...spread(fn)];
console.log(comparisonTable(work.map(compare)));
