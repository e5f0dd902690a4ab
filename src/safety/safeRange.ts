import { calculation } from '../core/calculation.js';
import { isRefused, refused } from '../core/read.js';
import { type Catalogue, findInput, functionAndInput } from './find.js';

export const safeRange = (catalogue: Catalogue) =>
  calculation({
    id: 'SAFERANGE',
    summary: 'The limits and the usual range of an input, with its unit.',
    question: 'Within which limits may this input lie, and what is usual?',
    inputs: functionAndInput,
    output: {
      kind: 'row',
      fields: {
        least: { label: 'Least', unit: '' },
        usualFrom: { label: 'Usual from', unit: '' },
        usualTo: { label: 'Usual to', unit: '' },
        most: { label: 'Most', unit: '' },
        unit: { label: 'Unit', text: true },
      },
    },
    method: 'read from the declaration of the input; a usual range that nobody can vouch for is left empty',
    sources: ['The declarations of this catalogue.'],
    example: {
      given: { function: 'BODYFEED', input: 'Body feed' },
      result: { least: 0, usualFrom: 50, usualTo: 200, most: 10_000, unit: 'g/hL' },
    },
    compute: ({ function: name, input }) => {
      const found = findInput(catalogue, name, input);
      if (isRefused(found)) return found;
      if (!('limit' in found)) return refused(`${found.label} is not a number, so it has no range.`);
      const [least, most] = found.limit;
      const [usualFrom, usualTo] = found.usual ?? [undefined, undefined];
      return { least, usualFrom, usualTo, most, unit: found.unit };
    },
  });
