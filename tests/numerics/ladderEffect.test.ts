import { describe, expect, it } from 'vitest';
import { type Decay, fitDecay } from '../../src/numerics/decay.js';
import { normalDeviates } from './independent.js';

describe('an effect of doses on haze', () => {
  it('is what the F test takes for one at 5 %', () => {
    // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.3: F(0.05; 2, 6) = 5.143.
    const doses = [0, 10, 20, 30, 40, 60, 80, 100, 150];
    const clean = doses.map((dose) => 2 + 6 * Math.exp(-0.03 * dose));
    const pattern = [0.4, -1, 1, -0.8, 0.9, -0.5, 0.7, -0.9, 0.6];
    const at = (scale: number) =>
      fitDecay(
        doses,
        clean.map((haze, i) => haze + scale * (pattern[i] as number)),
      );
    let [least, most] = [0.5, 3];
    for (let round = 0; round < 60; round++) {
      const middle = (least + most) / 2;
      if (at(middle) === 'no effect') most = middle;
      else least = middle;
    }
    const last = at(least) as Decay;
    expect(last.rSquared / 2 / ((1 - last.rSquared) / 6)).toBeCloseTo(5.143, 2);
  });

  it('is not seen in flat ladders with seeded noise at least 9 times in 10', () => {
    const doses = [0, 10, 20, 40, 60, 100];
    const deviate = normalDeviates(5);
    let told = 0;
    for (let ladder = 0; ladder < 500; ladder++) {
      const fit = fitDecay(
        doses,
        doses.map(() => 3 + 0.1 * deviate()),
      );
      if (typeof fit === 'string') told++;
    }
    expect(told / 500).toBeGreaterThan(0.9);
  });
});
