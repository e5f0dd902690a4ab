import { describe, expect, it } from 'vitest';
import { nearestOf } from '../../src/core/nearest.js';

describe('the nearest of several spellings', () => {
  it('takes the fewest letters to change, add or drop', () => {
    // Counted by hand: kitten → sitting takes three, kitten → mitt takes three and has the fewer letters to go.
    expect(nearestOf(['sitting', 'kitchen'], 'kitten')).toBe('kitchen');
    expect(nearestOf(['body feed', 'precoat load'], 'bdy fed')).toBe('body feed');
    expect(nearestOf(['ab', 'abc'], 'abcd')).toBe('abc');
  });

  it('is the first where several stand equally near', () => {
    expect(nearestOf(['cat', 'hat'], 'bat')).toBe('cat');
  });

  it('is none where there is nothing to choose from', () => {
    expect(nearestOf([], 'bat')).toBeUndefined();
  });
});
