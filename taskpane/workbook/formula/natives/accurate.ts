import { type BaseValueObject, ErrorType, ErrorValueObject, NumberValueObject } from '../../engine/formula.js';
import { elementwise } from './elementwise.js';
import { engineClass, type FunctionClass } from './engineClass.js';
import { numberIn, singly } from './singly.js';
import { besselI, besselJ, besselY, gamma, ratioAbove, studentAbove, studentDensity } from './special.js';

/** Nothing where the engine's own answer has to do. */
type Numbers = (...given: readonly number[]) => number | undefined;

const answerOf = (found: number): BaseValueObject =>
  Number.isFinite(found) ? NumberValueObject.create(found) : ErrorValueObject.create(ErrorType.NUM);

/**
 * Functions of the engine whose digits end too early, with others in their place.
 * What: `=GAMMA(2.5)`, `=BESSELJ(0,0)`, `=T.DIST(8,3,FALSE)`, `=F.DIST.RT(1,1,1)`. Expected: 1.32934038817914 (DLMF 5.4.6), 1
 * (DLMF 10.7.3), 0.00073690652, 0.5. Got: the same to nine digits, or to four of the density.
 */
const accurate = (name: string, numbers: Numbers): FunctionClass =>
  singly(name, (usual, ...given) => {
    const bare = usual();
    if (bare.isError()) return bare;
    const found = numbers(...given.map((one) => numberIn(one) ?? 0));
    return found === undefined ? bare : answerOf(found);
  });

/** The same of those that the engine goes through in another way. */
const bessel = (name: string, numbers: Numbers): FunctionClass =>
  class extends engineClass(name) {
    override calculate(x: BaseValueObject, order: BaseValueObject): BaseValueObject {
      return elementwise(x, order, (one, other) => {
        const bare = super.calculate(one, other) as BaseValueObject;
        const [at, n] = [numberIn(one), numberIn(other)];
        if (bare.isError() || at === undefined || n === undefined) return bare;
        const found = numbers(at, whole(n));
        return found === undefined ? bare : answerOf(found);
      });
    }
  };

const whole = Math.trunc;

export const accurateFunctions = (): [FunctionClass, string][] => [
  ...Object.entries<Numbers>({
    GAMMA: (x = 0) => gamma(x),
    'T.DIST': (x = 0, freedom = 1, summed = 1) =>
      summed ? 1 - studentAbove(x, whole(freedom)) : studentDensity(x, whole(freedom)),
    'T.DIST.RT': (x = 0, freedom = 1) => studentAbove(x, whole(freedom)),
    'T.DIST.2T': (x = 0, freedom = 1) => 2 * studentAbove(x, whole(freedom)),
    'F.DIST.RT': (x = 0, above = 1, below = 1) => ratioAbove(x, whole(above), whole(below)),
  }).map(([name, numbers]): [FunctionClass, string] => [accurate(name, numbers), name]),
  [bessel('BESSELI', (x = 0, n = 0) => besselI(x, n)), 'BESSELI'],
  [bessel('BESSELY', (x = 1, n = 0) => besselY(x, n)), 'BESSELY'],
  [bessel('BESSELJ', (x = 0, n = 0) => besselJ(x, n)), 'BESSELJ'],
];
