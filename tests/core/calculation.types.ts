/** Compiled by `npm run check`: each expected error is one wrong declaration that must not compile. */
import { calculation } from '../../src/core/calculation.js';

const words = {
  id: 'SAMPLE',
  summary: 'A sample.',
  question: 'What is declared here?',
  method: 'a + b',
  sources: ['Made up for this test.'],
} as const;

const number = { kind: 'number', label: 'A', unit: 'kg', limit: [0, 1], help: 'A mass.', source: 'Made up.' } as const;
const output = { kind: 'number', label: 'Sum', unit: 'kg' } as const;
const inputs = { a: number, b: { ...number, label: 'B', preset: 0 } } as const;

/** The right way compiles: an input with a preset may be left out of the example, and arrives as a number. */
export const right = calculation({
  ...words,
  inputs,
  output,
  example: { given: { a: 1 }, result: 1 },
  compute: ({ a, b }) => a + b,
});

export const undeclaredInput = calculation({
  ...words,
  inputs,
  output,
  example: { given: { a: 1 }, result: 1 },
  // @ts-expect-error compute reads an input that is not declared
  compute: ({ a, c }) => a + c,
});

export const missingExample = calculation({
  ...words,
  inputs,
  output,
  // @ts-expect-error the example leaves out an input without a preset
  example: { given: { b: 1 }, result: 1 },
  compute: ({ a, b }) => a + b,
});

export const exampleTooMany = calculation({
  ...words,
  inputs,
  output,
  // @ts-expect-error the example gives an input that is not declared
  example: { given: { a: 1, c: 1 }, result: 1 },
  compute: ({ a, b }) => a + b,
});

export const unknownUnit = calculation({
  ...words,
  // @ts-expect-error no such unit
  inputs: { a: { ...number, unit: 'stone' } },
  output,
  example: { given: { a: 1 }, result: 1 },
  compute: ({ a }: { a: number }) => a,
});

export const wrongKindOfExample = calculation({
  ...words,
  inputs,
  output,
  // @ts-expect-error a number is due
  example: { given: { a: 'one' }, result: 1 },
  compute: ({ a, b }) => a + b,
});

export const wrongResult = calculation({
  ...words,
  inputs,
  output,
  example: { given: { a: 1 }, result: 1 },
  // @ts-expect-error a number is due
  compute: ({ a }) => String(a),
});

export const choiceOutside = calculation({
  ...words,
  inputs: { kind: { kind: 'choice', of: ['hydrogel', 'xerogel'], label: 'Kind', help: 'Which.' } },
  output,
  // @ts-expect-error not one of the choices
  example: { given: { kind: 'perlite' }, result: 1 },
  compute: () => 1,
});

export const optionalIsPerhapsMissing = calculation({
  ...words,
  inputs: { a: number, b: { ...number, optional: true } },
  output,
  example: { given: { a: 1 }, result: 1 },
  // @ts-expect-error b may be undefined
  compute: ({ a, b }) => a + b,
});
