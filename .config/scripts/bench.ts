import { writeFileSync } from 'node:fs';
import { builtFunctions } from '../bench/builtFunctions.js';
import { calls } from '../bench/calls.js';
import { columns } from '../bench/columns.js';
import { firstLoad } from '../bench/firstLoad.js';
import { fits } from '../bench/fits.js';
import { growth } from '../bench/growth.js';
import { plans } from '../bench/plans.js';
import { recalculation } from '../bench/recalculation.js';
import { sizes } from '../bench/sizes.js';
import { speedPage } from '../bench/speedPage.js';
import { spread } from '../bench/spread.js';
import { compare } from '../bench/timing.js';
import { build } from '../bundle.js';
import { path } from '../paths.js';

// What a browser does is measured first, while this process holds nothing yet.
console.log(await build());
const [loads, recalculations] = [await firstLoad(), await recalculation()];
const fn = builtFunctions();
const functions = [...calls(fn), ...columns(fn), ...fits(fn), ...plans(fn), ...spread(fn)].map(compare);
const page = speedPage({ functions, recalculations, loads, growth: growth(fn), sizes: sizes() });
console.log(page);
if (process.argv.includes('--write')) writeFileSync(path('docs/speed.md'), page);
process.exit(0);
