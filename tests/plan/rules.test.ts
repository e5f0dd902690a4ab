import { describe, expect, it } from 'vitest';
import type { PlanValues } from '../../src/core/input.js';
import { cakeRefusal, labelsInWords } from '../../src/plan/cakeRefusal.js';
import type { RunPlan } from '../../src/plan/input.js';
import { comparedMixRefusal, variedMixRefusal } from '../../src/plan/mixRefusal.js';

const plan = (changed: PlanValues): PlanValues => ({
  cakeDensity: 300,
  aidPermeability: 1e-13,
  beerSolidsPermeability: 1e-16,
  stabiliserPermeability: 2e-14,
  stabiliserDose: 0.6,
  ...changed,
});
const without = { aidPermeability: undefined, beerSolidsPermeability: undefined, stabiliserPermeability: undefined };

describe('labels in words', () => {
  it('are joined as in a sentence', () => {
    expect(labelsInWords(['bodyFeed'])).toBe('Body feed');
    expect(labelsInWords(['bodyFeed', 'beerSolids'])).toBe('Body feed and Beer solids');
    expect(labelsInWords(['bodyFeed', 'beerSolids', 'cakeDensity'])).toBe('Body feed, Beer solids and Cake density');
  });
});

describe('how a plan says what the cake resists', () => {
  it('is fine as permeabilities, as a resistance, or not asked for', () => {
    expect(cakeRefusal(plan({}))).toBeUndefined();
    expect(cakeRefusal(plan({ ...without, cakeResistance: 1e10 }))).toBeUndefined();
    expect(cakeRefusal(plan({ ...without, cakeDensity: undefined }))).toBeUndefined();
    expect(cakeRefusal(plan({ stabiliserPermeability: undefined, stabiliserDose: 0 }))).toBeUndefined();
    expect(cakeRefusal(plan({ stabiliserPermeability: undefined, stabiliserDose: undefined }))).toBeUndefined();
  });

  it('is refused in both ways at once, naming what is given too much', () => {
    expect(cakeRefusal(plan({ ...without, aidPermeability: 1e-13, cakeResistance: 1e10 }))).toEqual({
      keys: ['cakeResistance', 'aidPermeability'],
      sentence:
        'Give either Cake resistance or permeabilities, but Aid permeability is given as well. Leave one way blank.',
    });
    expect(cakeRefusal(plan({ cakeResistance: 1e10 }))?.sentence).toContain(
      'Aid permeability, Beer solids permeability and Stabiliser permeability are given as well.',
    );
  });

  it('is refused where it is said in neither way', () => {
    expect(cakeRefusal(plan(without))).toEqual({
      keys: ['aidPermeability', 'beerSolidsPermeability', 'cakeResistance'],
      sentence: expect.stringMatching(/^Neither Cake resistance nor permeabilities are given\. Fit .*\(FITFEED\)\.$/),
    });
  });

  it('is refused where a permeability is missing among others', () => {
    expect(cakeRefusal(plan({ aidPermeability: undefined }))).toEqual({
      keys: ['aidPermeability'],
      sentence: 'Aid permeability is missing or blank; the permeabilities stand together.',
    });
    expect(cakeRefusal(plan({ aidPermeability: undefined, beerSolidsPermeability: undefined }))).toEqual({
      keys: ['aidPermeability', 'beerSolidsPermeability'],
      sentence:
        'Aid permeability and Beer solids permeability are missing or blank; the permeabilities stand together.',
    });
  });

  it('is refused without the stabiliser’s permeability where there is stabiliser', () => {
    expect(cakeRefusal(plan({ stabiliserPermeability: undefined }))).toEqual({
      keys: ['stabiliserPermeability', 'stabiliserDose'],
      sentence: 'Stabiliser permeability is missing or blank; it is needed wherever Stabiliser dose is above 0.',
    });
  });
});

describe('one cake resistance for several powder mixes', () => {
  const mix = (changed: Partial<RunPlan>): RunPlan =>
    ({
      bodyFeed: 0.9,
      beerSolids: 0.25,
      stabiliserDose: 0.6,
      stabiliserMoisture: 0.65,
      stabiliserRemoved: 0,
      cakeResistance: 1e10,
      ...changed,
    }) as RunPlan;

  it('is refused where the mix varies, in the singular and in the plural', () => {
    expect(variedMixRefusal(mix({}), mix({}))).toBeUndefined();
    expect(variedMixRefusal(mix({}), mix({ bodyFeed: 1.2 }))).toMatch(/^Body feed is varied at one Cake resistance/);
    expect(variedMixRefusal(mix({}), mix({ bodyFeed: 1.2, beerSolids: 0.3 }), ' in Present')).toMatch(
      /^Body feed and Beer solids are varied in Present at one Cake resistance, .*, or hold Body feed and Beer solids\.$/,
    );
    const fitted = { cakeResistance: undefined };
    expect(variedMixRefusal(mix(fitted), mix({ ...fitted, bodyFeed: 1.2 }))).toBeUndefined();
  });

  it('counts the stabiliser only where some of it reaches the cake', () => {
    const removed = { stabiliserRemoved: 1 };
    expect(variedMixRefusal(mix(removed), mix({ ...removed, stabiliserDose: 0.8 }))).toBeUndefined();
    const none = { stabiliserDose: 0 };
    expect(variedMixRefusal(mix(none), mix({ ...none, stabiliserMoisture: 0.05 }))).toBeUndefined();
    expect(variedMixRefusal(mix(none), mix({}))).toMatch(/^Stabiliser dose is varied/);
    expect(variedMixRefusal(mix({}), mix(none))).toMatch(/^Stabiliser dose is varied/);
    expect(variedMixRefusal(mix({}), mix({ stabiliserMoisture: 0.05 }))).toMatch(/^Stabiliser moisture is varied/);
  });

  it('is refused where two plans share it, and not where each has its own', () => {
    expect(comparedMixRefusal(mix({}), mix({ bodyFeed: 1.2 }))).toMatch(
      /^Body feed differs between Present and Proposed at one and the same Cake resistance/,
    );
    expect(comparedMixRefusal(mix({}), mix({ bodyFeed: 1.2, beerSolids: 0.3 }))).toMatch(
      /^Body feed and Beer solids differ /,
    );
    expect(comparedMixRefusal(mix({}), mix({ bodyFeed: 1.2, cakeResistance: 2e10 }))).toBeUndefined();
    expect(
      comparedMixRefusal(mix({ cakeResistance: undefined }), mix({ cakeResistance: undefined, bodyFeed: 2 })),
    ).toBeUndefined();
  });
});
