import { describe, expect, it } from 'vitest';
import { isNoAnswer } from '../../src/core/evaluate.js';
import { pressureAfter, type Run, riseAfter, runOf, timeFor } from '../../src/plan/run.js';
import { call } from '../functions/answers.js';
import { integrate } from './integrate.js';
import { runPlan } from './runPlan.js';
import { planMatrices } from './sheet.js';

const BAR = 1e5;

function run(changed: Parameters<typeof runPlan>[0]): Run {
  const found = runOf(runPlan(changed));
  if (isNoAnswer(found)) throw new Error(found.none);
  return found;
}

/**
 * Solids laid on the precoat, kg per m² of septum, when they take this pressure: the stress on the solids is
 * followed through the cake, layer by layer, from the precoat (all of it) to the surface (none). A layer resists as
 * α₁/(1−n) (p/bar)^n, whose mean over the cake is α₁ (Δp/bar)^n (Ruth, Tiller).
 */
function laidByIntegration({ plan, solids, flowing }: Run, pressure: number): number {
  const { compressibility: n, septumRadius: r, cakeDensity } = plan;
  // The stress is written s^m, so that its rate stays finite at the surface.
  const m = 2 / (1 - n);
  const top = pressure ** (1 / m);
  const layer = (s: number) => (flowing.resistance / (1 - n)) * (s ** m / BAR) ** n;
  const perLoad = (s: number) => (m * s ** (m - 1)) / (flowing.viscosity * flowing.flux * layer(s));
  const from = 0;
  if (r === 0) return integrate((s) => (s === 0 ? 0 : perLoad(s)), from, 0, top);
  const precoat = Math.sqrt(r * r + (2 * r * solids.precoat) / cakeDensity);
  // Flux falls as r/x on the way out, and each layer of thickness dx holds ρ dx of solids for each m² of its own.
  const outer = integrate((s, x) => (s === 0 ? 0 : (perLoad(s) * x) / (r * cakeDensity)), from, precoat, top);
  return (cakeDensity * (outer * outer - precoat * precoat)) / (2 * r);
}

const CASES = [
  ['a rigid cake on a flat septum', {}],
  ['a compressible cake on a flat septum', { compressibility: 0.4 }],
  ['a rigid cake on a candle', { septumRadius: 15 }],
  ['a rigid cake on a thin candle with a thick precoat', { septumRadius: 6, precoatLoad: 1500 }],
  ['a compressible cake on a candle', { septumRadius: 15, compressibility: 0.3 }],
  ['a very compressible cake on a wide candle', { septumRadius: 35, compressibility: 0.8, cakeDensity: 420 }],
] as const;

describe.each(CASES)('the closed form of a run with %s', (_, changed) => {
  const long = run({ ...changed, cakeSpace: 1000, pressureLimit: 4.5 });

  it('reaches the pressure limit where an integration through the cake does', () => {
    const laid = laidByIntegration(long, (4.5 - 0.6) * BAR);
    const volume = (laid * long.plan.area) / long.solids.total;
    expect(Math.abs(long.until.pressure / volume - 1)).toBeLessThan(1e-8);
  });

  it('has the pressure drop half-way that the integration gives', () => {
    const volume = long.until.pressure / 2;
    const laid = laidByIntegration(long, pressureAfter(long, volume) - long.plan.startPressure);
    expect(Math.abs((laid * long.plan.area) / long.solids.total / volume - 1)).toBeLessThan(1e-8);
  });

  it('rises so that its rate, integrated over the time, gives its pressure drop', () => {
    const from = long.until.pressure / 10;
    const risen = integrate(
      (time) => riseAfter(long, time * long.plan.flow) / BAR,
      timeFor(long, from),
      pressureAfter(long, from) / BAR,
      timeFor(long, long.until.pressure),
    );
    expect(risen).toBeCloseTo(4.5, 8);
  });
});

describe('the rise at the start', () => {
  it('of a compressible cake is what the first hour of its curve gains', () => {
    const columns = planMatrices({ compressibility: 0.3, runLimit: 250 });
    const curve = call('RUNCURVE', ...columns, 2) as number[][];
    const report = new Map(call('RUNREPORT', ...planMatrices({ compressibility: 0.3 })) as [string, number][]);
    expect(report.get('Rise at the start bar/h')).toBeCloseTo((curve[2]?.[2] ?? 0) - (curve[1]?.[2] ?? 0), 12);
    expect(report.get('Rise at the start bar/h')).toBeGreaterThan(0.05);
  });
});
