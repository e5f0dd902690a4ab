import { catalogue } from '../src/catalogue.js';
import type { Input } from '../src/core/input.js';
import { type Parameter, parametersOf } from './parameters.js';
import { english, type Words } from './words.js';

const NAMESPACE = 'POWDER';

/** Every input takes a cell, a range or an array, so the host is told: a matrix of anything. */
const MATRIX = { type: 'any', dimensionality: 'matrix' } as const;

export interface ParameterMetadata {
  readonly name: string;
  readonly description: string;
  readonly type: 'any';
  readonly dimensionality: 'matrix';
  readonly optional?: true;
}

export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly helpUrl: string;
  readonly parameters: readonly ParameterMetadata[];
  readonly result: { readonly type: 'any'; readonly dimensionality: 'matrix' };
}

export interface Metadata {
  readonly allowErrorForDataTypeAny: true;
  readonly allowCustomDataForDataTypeAny: true;
  readonly functions: readonly FunctionMetadata[];
}

function accepts(input: Input, words: Words): string {
  if (input.kind === 'choice') return words.anyOf(input.of);
  if (input.kind === 'number' || input.kind === 'series') return words.span(input.limit, input.unit);
  return '';
}

const presetOf = (input: Input, words: Words): string =>
  'preset' in input && input.preset !== undefined ? words.preset(input.preset) : '';

const describe = ({ label, help, input, column }: Parameter, words: Words): string => {
  const facts =
    column === undefined ? [accepts(input, words), presetOf(input, words)].filter((fact) => fact !== '') : [];
  return `${words.say(label)}${facts.length > 0 ? ` (${facts.join('; ')})` : ''}: ${words.say(help)}`;
};

/**
 * The functions as the host wants them told.
 * @param address where the add-in is hosted, without a slash at the end; the help links point there.
 * @param words the language of the descriptions; ids and names of parameters are the same in all.
 */
export function metadata(address: string, words: Words = english): Metadata {
  return {
    allowErrorForDataTypeAny: true,
    allowCustomDataForDataTypeAny: true,
    functions: catalogue.map(({ id, summary, inputs }) => ({
      id,
      name: id,
      description: words.say(summary),
      helpUrl: `${address}/functions.html#${id.toLowerCase()}`,
      parameters: parametersOf(inputs).map((parameter) => ({
        name: parameter.name,
        description: describe(parameter, words),
        ...MATRIX,
        ...(parameter.optional ? { optional: true as const } : {}),
      })),
      result: MATRIX,
    })),
  };
}

export { NAMESPACE };
