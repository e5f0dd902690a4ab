import type { filtrationCost } from '../../plan/filtrationCost.js';
import type { saving } from '../../plan/saving.js';
import type { At, Mark } from '../layout.js';
import { BEERS } from './beers.js';
import { beerColumn } from './lines.js';

export const columnNumber = (calculation: typeof filtrationCost | typeof saving, key: string) =>
  Object.keys(calculation.output.kind === 'table' ? calculation.output.fields : {}).indexOf(key) + 1;

export const acrossBeers: Mark = { column: beerColumn(0), columns: BEERS.length };

export const sumOf = (at: At, name: string) => `=SUM(${at(name)})`;
