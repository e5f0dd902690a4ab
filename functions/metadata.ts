import { catalogue } from '../src/catalogue.js';
import type { Input } from '../src/core/input.js';
import { anyOf, plainNumber, spanInWords } from '../src/core/wording.js';
import { type Parameter, parametersOf } from './parameters.js';

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

function accepts(input: Input): string {
  if (input.kind === 'choice') return anyOf(input.of);
  if (input.kind === 'number' || input.kind === 'series') return spanInWords(input.limit, input.unit);
  return '';
}

const presetOf = (input: Input): string => {
  if (!('preset' in input) || input.preset === undefined) return '';
  return `preset ${typeof input.preset === 'number' ? plainNumber(input.preset) : input.preset}`;
};

const describe = ({ label, help, input, column }: Parameter): string => {
  const facts = column === undefined ? [accepts(input), presetOf(input)].filter((fact) => fact !== '') : [];
  return `${label}${facts.length > 0 ? ` (${facts.join('; ')})` : ''}: ${help}`;
};

/**
 * The functions as the host wants them told.
 * @param address where the add-in is hosted, without a slash at the end; the help links point there.
 */
export function metadata(address: string): Metadata {
  return {
    allowErrorForDataTypeAny: true,
    allowCustomDataForDataTypeAny: true,
    functions: catalogue.map(({ id, summary, inputs }) => ({
      id,
      name: id,
      description: summary,
      helpUrl: `${address}/functions.html#${id.toLowerCase()}`,
      parameters: parametersOf(inputs).map((parameter) => ({
        name: parameter.name,
        description: describe(parameter),
        ...MATRIX,
        ...(parameter.optional ? { optional: true as const } : {}),
      })),
      result: MATRIX,
    })),
  };
}

export { NAMESPACE };
