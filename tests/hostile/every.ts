import { bindAll, type WorksheetFunction } from '../../functions/bind.js';
import { catalogue } from '../../src/catalogue.js';
import { answers } from '../functions/answers.js';

const functions = bindAll(answers);

/** Every calculation of the catalogue: its id, its worksheet function, itself. */
export const EVERY = catalogue.map((one) => [one.id, functions.get(one.id) as WorksheetFunction, one] as const);
