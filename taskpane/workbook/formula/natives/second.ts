import { NumberValueObject } from '../../engine/formula.js';
import { numberIn, singly } from './singly.js';

const DAY = 86_400;

/**
 * SECOND.
 * What: `=SECOND(0.00001)`. Expected: 1, the nearest second (OpenFormula 1.2, 6.10.16; LibreOffice 7.4). Got: 0.
 */
export const Second = singly('SECOND', (usual, given) => {
  const bare = usual();
  const day = given?.isString() ? undefined : numberIn(given);
  if (bare.isError() || day === undefined) return bare;
  return NumberValueObject.create(Math.round((day - Math.floor(day)) * DAY) % 60);
});
