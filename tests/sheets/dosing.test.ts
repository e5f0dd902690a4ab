import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { costPerHl } from '../../src/cost/costPerHl.js';
import { powderPerHl } from '../../src/cost/powderPerHl.js';
import { bodyFeed } from '../../src/feed/bodyFeed.js';
import { chargeHours } from '../../src/feed/chargeHours.js';
import { feedAfterSwap } from '../../src/feed/feedAfterSwap.js';
import { precoatMass } from '../../src/feed/precoatMass.js';
import { pumpRate } from '../../src/feed/pumpRate.js';
import { slurryWater } from '../../src/feed/slurryWater.js';
import { sameSolids } from '../../src/moisture/sameSolids.js';
import { examplePlan } from '../../src/plan/example.js';
import { runCurve } from '../../src/plan/runCurve.js';
import { runReport } from '../../src/plan/runReport.js';
import { dosing } from '../../src/sheets/dosing.js';
import { contactTank } from '../../src/stabiliser/contactTank.js';
import { swapRange } from '../../src/stabiliser/swapRange.js';
import { answerOf, figureOf, planOf, reportOf } from './library.js';
import { type Shown, shown } from './shown.js';

let sheet: Shown;
beforeAll(async () => {
  sheet = await shown(dosing);
});
afterAll(() => sheet.dispose());

const dose = () => figureOf(sameSolids, { amount: 60, moisture: 0.64, newMoisture: 0.65 });
const range = () => answerOf(swapRange, { dose: dose(), fromKind: 'hydrogel', toKind: 'adsorptive' })[0] as number[];
const feed = () => figureOf(feedAfterSwap, { feed: 90, stabiliser: range()[1] as number, credit: 0.6, least: 50 });

/** The plan written out anew, from the example’s figures and those of filter 2. */
const plan = (proposed: boolean) => {
  const values = examplePlan({
    area: 48,
    flow: 240,
    ...(proposed
      ? { bodyFeed: feed(), stabiliserDose: range()[1], stabiliserMoisture: 0.01, stabiliserPermeability: 0.08 }
      : { bodyFeed: 90, stabiliserDose: 60, stabiliserMoisture: 0.64, stabiliserPermeability: 0.02 }),
  });
  return planOf(Object.keys(values), { values: Object.values(values) });
};

describe('the dosing sheet', () => {
  it('shows low end, middle and high end of the dose after the swap', () => {
    expect(sheet.named('doseCorrected')).toBeCloseTo((60 * 0.36) / 0.35, 9);
    expect(sheet.range(dosing.names.swapRange ?? '').flat()).toEqual(range());
    expect(sheet.named('newDose')).toBeCloseTo(range()[1] as number, 9);
  });

  it('cuts the body feed by what the new powder does of its work', () => {
    expect(sheet.named('proposedFeed')).toBeCloseTo(feed(), 9);
    expect(sheet.named('feedRate')).toBeCloseTo(figureOf(bodyFeed, { flow: 240, dose: 90 }), 9);
    expect(sheet.named('newFeedRate')).toBeCloseTo(figureOf(bodyFeed, { flow: 240, dose: feed() }), 9);
  });

  it('makes up precoat and slurry', () => {
    const precoat = figureOf(precoatMass, { area: 48, load: 800 });
    expect(sheet.named('precoat')).toBeCloseTo(precoat, 9);
    const precoatWater = figureOf(slurryWater, { powder: precoat, strength: 100, density: 2300 });
    expect(sheet.named('precoatWater')).toBeCloseTo(precoatWater, 9);
    expect(sheet.named('chargePowder')).toBeCloseTo(96, 9);
    expect(sheet.named('chargeWater')).toBeCloseTo(
      figureOf(slurryWater, { powder: 96, strength: 120, density: 2300 }),
      9,
    );
  });

  it('sets the pump, the next make-up and the buffer tank, now and proposed', () => {
    for (const [pump, charge, dose] of [
      ['pump', 'charge', 90],
      ['newPump', 'newCharge', feed()],
    ] as const) {
      const rate = figureOf(pumpRate, { flow: 240, dose, strength: 120 });
      expect(sheet.named(pump)).toBeCloseTo(rate, 9);
      expect(sheet.named(charge)).toBeCloseTo(figureOf(chargeHours, { tank: 800, pump: rate }), 9);
    }
    expect(sheet.named('buffer')).toBeCloseTo(figureOf(contactTank, { flow: 240, contact: 20 }), 9);
    expect(sheet.named('newBuffer')).toBeCloseTo(figureOf(contactTank, { flow: 240, contact: 5 }), 9);
  });

  it('predicts both runs and draws both pressure curves', () => {
    for (const [column, curve] of ['curve', 'newCurve'].entries()) {
      const report = reportOf(runReport, plan(column === 1));
      const beside = (label: string) => sheet.beside(label, { under: 'Predicted run', column: column + 1 });
      expect(beside('Run')).toBeCloseTo(report['Run hL'] as number, 6);
      expect(beside('Ends by')).toBe(report['Ends by']);
      expect(beside('End pressure drop')).toBeCloseTo(report['End pressure drop bar'] as number, 9);
      expect(beside('Powder in all')).toBeCloseTo(report['Powder in all g/hL'] as number, 9);
      const [header, ...points] = sheet.range(dosing.names[curve] ?? '');
      const [expectedHeader, ...expected] = answerOf(runCurve, { ...plan(column === 1), points: 11 });
      expect(header).toEqual(expectedHeader);
      points.flat().forEach((value, index) => {
        expect(value).toBeCloseTo(expected.flat()[index] as number, 6);
      });
    }
  });

  it('adds up the cost of powder and what the swap saves on it', () => {
    const cost = (column: number, dose: number, stabiliser: number, price: number) => {
      const run = reportOf(runReport, plan(column === 1))['Run hL'] as number;
      const aid = figureOf(powderPerHl, { precoat: 38.4, feed: dose, run });
      return figureOf(costPerHl, { dose: aid, price: 0.8 }) + figureOf(costPerHl, { dose: stabiliser, price });
    };
    const now = cost(0, 90, 60, 2.4);
    const proposed = cost(1, feed(), range()[1] as number, 2.8);
    expect(sheet.named('powderCost')).toBeCloseTo(now, 9);
    expect(sheet.named('newPowderCost')).toBeCloseTo(proposed, 9);
    expect(sheet.named('powderSaved')).toBeCloseTo(now - proposed, 9);
  });

  it('says what to watch from its own figures', () => {
    const watched = (label: string) => sheet.beside(label, { under: 'What to watch' });
    expect(watched('Run')).toBe('The proposed run is as long as the present one, or longer.');
    expect(watched('Slurry')).toBe('The slurry tank runs empty before the proposed run ends: plan a make-up.');
    expect(watched('Buffer tank')).toContain('too small for the present powder');
  });
});
