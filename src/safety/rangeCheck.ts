import { calculation } from '../core/calculation.js';
import type { Cell } from '../core/input.js';
import { valueRefusal } from '../core/plan.js';
import { choiceRefusal, isRefused, numberRefusal } from '../core/read.js';
import { amount, spanInWords } from '../core/wording.js';
import { type Catalogue, type Found, findInput, functionAndInput } from './find.js';

/** `usual`, `unusual: …` or `refused: …` for one value of one input. */
export function verdict(input: Found, cell: Cell): string {
  if (input.kind === 'choice') {
    const refusal = choiceRefusal(input, cell);
    return refusal === undefined ? 'usual' : `refused: ${refusal}`;
  }
  if (!('limit' in input)) return 'usual';
  const refusal = input.kind === 'plan label' ? valueRefusal(input, cell) : numberRefusal(input, cell);
  if (refusal !== undefined) return `refused: ${refusal}`;
  const value = Number(cell);
  if (!input.usual || (value >= input.usual[0] && value <= input.usual[1])) return 'usual';
  return `unusual: ${input.label} is usually ${spanInWords(input.usual, input.unit)}, and ${amount(Number(value.toPrecision(12)), input.unit)} was given.`;
}

export const rangeCheck = (catalogue: Catalogue) =>
  calculation({
    id: 'RANGECHECK',
    summary: 'Whether a value is usual, unusual or refused as an input of a function.',
    question: 'Is this figure within its safe range?',
    inputs: {
      ...functionAndInput,
      value: { kind: 'cell', label: 'Value', help: 'The value to judge, in the unit of the input.' },
    },
    output: { kind: 'text', label: 'Verdict' },
    method: 'limits first, then the usual range; both read from the declaration of the input',
    sources: ['The declarations of this catalogue.'],
    example: { given: { function: 'BODYFEED', input: 'Body feed', value: 90 }, result: 'usual' },
    compute: ({ function: name, input, value }) => {
      const found = findInput(catalogue, name, input);
      return isRefused(found) ? found : verdict(found, value);
    },
  });
