import type { BaseFunction, BaseValueObject } from '../../engine/formula.js';
import { engineClass, type FunctionClass } from './engineClass.js';

/** Engine functions that go through their values one set at a time do so in a method of this name. */
export type Singly = new (
  name: string,
) => BaseFunction & { _handleSingleObject(...given: readonly BaseValueObject[]): BaseValueObject };

type Usual = () => BaseValueObject;

/** A function of the engine with another answer for one set of values; `usual` gives the engine's own. */
export const singly = (
  name: string,
  answer: (usual: Usual, ...given: readonly BaseValueObject[]) => BaseValueObject,
): FunctionClass =>
  class extends (engineClass(name) as Singly) {
    override _handleSingleObject(...given: readonly BaseValueObject[]): BaseValueObject {
      return answer(() => super._handleSingleObject(...given), ...given);
    }
  };

/** The number that a value stands for; nothing where it is none. */
export function numberIn(value: BaseValueObject | undefined): number | undefined {
  const read = value?.convertToNumberObjectValue();
  return read && !read.isError() ? Number(read.getValue()) : undefined;
}
