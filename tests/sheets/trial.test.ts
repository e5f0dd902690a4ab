import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { compareRuns } from '../../src/cake/compareRuns.js';
import { fitClarity } from '../../src/cake/fitClarity.js';
import { fitFeed } from '../../src/cake/fitFeed.js';
import { fitRun } from '../../src/cake/fitRun.js';
import { riseRate } from '../../src/cake/riseRate.js';
import { bestFeed } from '../../src/plan/bestFeed.js';
import { PLAN } from '../../src/plan/table.js';
import { STATED } from '../../src/sheets/scenario.js';
import { FEED_TRIALS, NEW_LOG, OLD_LOG, REPEATED_RUNS } from '../../src/sheets/trial/logs.js';
import { HAZE_LIMIT } from '../../src/sheets/trial/trialCase.js';
import { trial } from '../../src/sheets/trial.js';
import { figureOf, planOf, reportOf } from './library.js';
import { type Shown, shown } from './shown.js';
import { feedTrials, loggedRun, NOISE, repeatedRuns, TRUE_HAZE, trueRise, trueSolids } from './trialRuns.js';

const LOGS = [OLD_LOG, NEW_LOG] as const;
const column = (rows: readonly (readonly number[])[], index: number) => rows.map((row) => row[index] as number);

let sheet: Shown;
beforeAll(async () => {
  sheet = await shown({ ...trial, conditions: [] });
});
afterAll(() => sheet.dispose());

const fitOf = (run: 0 | 1) =>
  reportOf(fitRun, {
    volumes: column(LOGS[run], 1),
    bars: column(LOGS[run], 2),
    area: 48,
    flow: 240,
    viscosity: 2.8,
    solids: trueSolids(run),
  });

const feedFit = () =>
  reportOf(fitFeed, {
    doses: column(FEED_TRIALS, 0).map((feed) => feed * 0.995),
    rises: column(FEED_TRIALS, 1),
    flux: [5],
    viscosity: [2.8],
    beerSolids: [25],
    cakeDensity: 300,
  });

describe('the invented logs', () => {
  it('are what the library’s physics gives for the case, with noise of a fixed seed on each reading', () => {
    expect(OLD_LOG).toEqual(loggedRun(0));
    expect(NEW_LOG).toEqual(loggedRun(1));
    expect(FEED_TRIALS).toEqual(feedTrials());
    expect(REPEATED_RUNS).toEqual(repeatedRuns());
  });

  it('are noisy, and nowhere further off than the noise reaches', () => {
    for (const run of [0, 1] as const) {
      const off = LOGS[run].map(([hours = 0, , bar = 0]) => bar - 0.6 - trueRise(run) * hours);
      expect(Math.max(...off.map(Math.abs))).toBeLessThanOrEqual(NOISE.bar / 2 + 0.005);
      expect(off.filter((one) => Math.abs(one) > 0.01).length).toBeGreaterThan(off.length / 3);
    }
  });

  it('give the true figures back within three standard errors', () => {
    for (const run of [0, 1] as const) {
      const fit = fitOf(run);
      const off = Math.abs((fit['Rise bar/h'] as number) - trueRise(run));
      expect(off).toBeLessThan(3 * (fit['Rise, standard error bar/h'] as number));
    }
    const feed = feedFit();
    for (const [label, value] of [
      ['Aid permeability', 0.1],
      ['Beer solids permeability', 1e-4],
    ] as const) {
      const off = Math.abs((feed[`${label} darcy`] as number) - value);
      expect(off).toBeLessThan(3 * (feed[`${label}, standard error darcy`] as number));
    }
  });
});

describe('the trial log', () => {
  it('shows both fits as the library makes them', () => {
    for (const run of [0, 1] as const) {
      const beside = (label: string) => sheet.beside(label, { under: 'What the logs say', column: run + 1 });
      const fit = fitOf(run);
      for (const [label, unit] of [
        ['Start pressure drop', ' bar'],
        ['Cake resistance', ' m/kg'],
        ['Cake resistance, standard error', ' m/kg'],
        ['R²', ''],
      ] as const) {
        const expected = fit[`${label}${unit}`] as number;
        expect((beside(label) as number) / expected).toBeCloseTo(1, 9);
      }
      expect(beside('Shape of the log')).toBe('straight');
      const slope = figureOf(riseRate, { hours: column(LOGS[run], 0), bars: column(LOGS[run], 2) });
      expect(beside('Rise by the median of slopes')).toBeCloseTo(slope, 9);
    }
  });

  it('draws each fit beside its readings', () => {
    const fit = fitOf(0);
    const line = sheet.range(trial.names.oldFit ?? '').flat();
    const last = OLD_LOG.length - 1;
    const expected =
      (fit['Start pressure drop bar'] as number) + (fit['Rise bar/hL'] as number) * (OLD_LOG[last]?.[1] as number);
    expect(line[last]).toBeCloseTo(expected, 9);
    expect(line[last + 1] ?? '').toBe('');
  });

  it('takes the least body feed for clarity, on the safe side, from the outlet hazes of the trials', () => {
    const report = reportOf(fitClarity, {
      doses: column(FEED_TRIALS, 0),
      hazes: column(FEED_TRIALS, 3),
      limit: HAZE_LIMIT,
    });
    const safe = report['Least body feed, on the safe side g/hL'] as number;
    const truth = Math.log(TRUE_HAZE.none / HAZE_LIMIT) / TRUE_HAZE.fall;
    expect(safe).toBeGreaterThan(truth - 1);
    expect(safe).toBeLessThan(truth + 6);
    expect(sheet.named('trialLeastFeed')).toBeCloseTo(safe, 9);
    for (const run of [1, 2])
      expect(sheet.beside(PLAN.leastFeed.label, { under: 'Plan with the fitted figures', column: run })).toBeCloseTo(
        safe,
        9,
      );
  });

  it('judges the difference of both logs against what their readings leave open', () => {
    const [old, other] = [fitOf(0), fitOf(1)];
    const difference = (other['Rise bar/h'] as number) - (old['Rise bar/h'] as number);
    const reach = (fit: typeof old) =>
      (fit['Rise, standard error bar/h'] as number) * (fit['Standard errors in 95 %'] as number);
    expect(sheet.named('risePerHourDifference')).toBeCloseTo(difference, 9);
    expect(sheet.named('risePerHourReach')).toBeCloseTo(Math.hypot(reach(old), reach(other)), 9);
    expect(sheet.named('risePerHourRatio')).toBeGreaterThan(1);
    const percent = Math.round((1000 * Math.abs(difference)) / (old['Rise bar/h'] as number)) / 10;
    const verdict = String(sheet.cell(trial.names.risePerHourVerdict ?? ''));
    expect(verdict).toContain(`rises slower by ${percent} %`);
    expect(verdict).toContain('the repeated runs tell of the powders');
  });

  it('has the verdict of the repeated runs as its headline, the logged ones among them', () => {
    const runs = [
      ['Old powder', fitOf(0)['Rise bar/h'] as number],
      ['New powder', fitOf(1)['Rise bar/h'] as number],
      ...REPEATED_RUNS,
    ] as const;
    const report = reportOf(compareRuns, {
      powders: runs.map(([powder]) => powder),
      figures: runs.map(([, rise]) => rise),
      worth: 0.1,
    });
    expect(sheet.cell(trial.names.powdersVerdict ?? '')).toBe(report.Verdict);
    expect(report.Verdict).toMatch(/^New powder is lower by/);
    expect(sheet.named('runsNeeded')).toBe(6);
  });

  it('takes the permeability of each stabiliser from its run, near the true one', () => {
    expect(sheet.beside('Aid permeability', { under: 'Permeabilities' })).toBeCloseTo(
      feedFit()['Aid permeability darcy'] as number,
      9,
    );
    expect(sheet.named('oldPart') / 0.02).toBeCloseTo(1, 1);
    expect(sheet.named('newPart') / 0.08).toBeCloseTo(1, 1);
  });

  it('leads to the body feed of least cost of both plans', () => {
    const from = trial.rows.findIndex(([cell]) => cell?.text === 'Plan with the fitted figures') + 3;
    const stated = new Set<string>([...STATED, 'leastFeed']);
    const labels = Object.entries(PLAN).flatMap(([key, label]) =>
      stated.has(key) && label.group !== 'year' ? [label] : [],
    );
    for (const [run, letter] of ['B', 'C'].entries()) {
      const rows = sheet.range(`A${from}:A${from + labels.length - 1}`).flat() as string[];
      expect(rows).toEqual(labels.map(({ label }) => label));
      const values = sheet.range(`${letter}${from}:${letter}${from + labels.length - 1}`).flat() as number[];
      const report = reportOf(bestFeed, planOf(rows, { values }));
      const beside = (label: string) => sheet.beside(label, { under: 'Body feed of least cost', column: run + 1 });
      expect(beside('Least cost')).toBeCloseTo(report['Least cost per hL'] as number, 9);
      expect(beside('Cost today')).toBeCloseTo(report['Cost today per hL'] as number, 9);
      expect(beside('Remark')).toBe(report.Remark);
    }
  });
});
