import { describe, expect, it } from 'vitest';
import { logOf } from '../chain/made.js';
import { call } from '../functions/answers.js';
import { normalDeviates } from '../numerics/independent.js';
import { byLabel, type Changed, columnsOf, rowsOf } from '../plan/columns.js';
import { columnOf, reportOf } from './log.js';

const resisting = (changed: Changed): Changed => ({
  aidPermeability: undefined,
  beerSolidsPermeability: undefined,
  stabiliserPermeability: undefined,
  cakeResistance: 1.5497e11,
  cakeSpace: 20,
  ...changed,
});

const made = (changed: Changed, points = 40) =>
  rowsOf('RUNCURVE', ...columnsOf(resisting(changed)), points)
    .slice(1)
    .map(([volume, , bar]) => [volume as number, bar as number] as const);

const fitted = (log: readonly (readonly [number, number])[], ...septum: number[]) => {
  const [volumes, bars] = [log.map(([volume]) => volume), log.map(([, bar]) => bar)];
  return reportOf('FITCAKE', volumes, bars, 50, 250, 2.8, 135.55, ...septum);
};

describe('FITCAKE', () => {
  it.each([
    [0.3, 0],
    [0.6, 0],
    [0.3, 15],
    [0.6, 6],
  ])('gives back start, resistance at 1 bar and exponent %s of a made run, septum radius %s mm', (n, radius) => {
    const report = fitted(made({ compressibility: n, septumRadius: radius }), radius, 300, 796);
    expect(report.Exponent).toBeCloseTo(n, 8);
    expect((report['Resistance at 1 bar m/kg'] as number) / 1.5497e11).toBeCloseTo(1, 7);
    expect(report['Start pressure drop bar']).toBeCloseTo(0.6, 7);
  });

  it('fed into the plan gives the true run, where the mean resistance of FITRUN gives a third less', () => {
    const log = made({ compressibility: 0.3 });
    const run = (cakeResistance: number, compressibility: number) =>
      rowsOf('RUNLENGTH', ...columnsOf(resisting({ cakeResistance, compressibility })))[0]?.[0] as number;
    const truth = run(1.5497e11, 0.3);
    const report = fitted(log);
    expect(run(report['Resistance at 1 bar m/kg'] as number, report.Exponent as number) / truth).toBeCloseTo(1, 6);
    const [volumes, bars] = [log.map(([volume]) => volume), log.map(([, bar]) => bar)];
    const mean = reportOf('FITRUN', volumes, bars, 50, 250, 2.8, 135.55)['Cake resistance m/kg'] as number;
    expect(run(mean, 0.3) / truth).toBeLessThan(0.7);
  });

  it('has standard errors and a correlation that 600 logs with independent noise bear out', () => {
    const noise = normalDeviates(5);
    const log = made({ compressibility: 0.3 });
    const found = Array.from({ length: 600 }, () =>
      fitted(log.map(([volume, bar]) => [volume, bar + 0.03 * noise()] as const)),
    );
    const mean = (list: readonly number[]) => list.reduce((sum, one) => sum + one, 0) / list.length;
    const logarithms = found.map((one) => Math.log(one['Resistance at 1 bar m/kg'] as number));
    const exponents = found.map((one) => one.Exponent as number);
    const [meanLog, meanExponent] = [mean(logarithms), mean(exponents)];
    const spread = (list: readonly number[]) => Math.sqrt(mean(list.map((one) => (one - mean(list)) ** 2)));
    const together = mean(logarithms.map((one, i) => (one - meanLog) * ((exponents[i] as number) - meanExponent)));
    const said = (label: string) => mean(found.map((one) => one[label] as number));
    // 600 logs tell a spread to 1/√1200, 3 %; what is said is up to a sixth more, since readings might err together.
    expect(spread(exponents) / said('Exponent, standard error')).toBeGreaterThan(0.83);
    expect(spread(exponents) / said('Exponent, standard error')).toBeLessThan(1.02);
    const relative = mean(
      found.map(
        (one) =>
          (one['Resistance at 1 bar, standard error m/kg'] as number) / (one['Resistance at 1 bar m/kg'] as number),
      ),
    );
    expect(spread(logarithms) / relative).toBeGreaterThan(0.83);
    expect(spread(logarithms) / relative).toBeLessThan(1.02);
    const correlation = together / spread(logarithms) / spread(exponents);
    expect(Math.abs(correlation - said('Correlation of both errors'))).toBeLessThan(0.05);
    const starts = found.map((one) => one['Start pressure drop bar'] as number);
    const starting = spread(starts) / said('Start pressure drop, standard error bar');
    expect(starting).toBeGreaterThan(0.83);
    expect(starting).toBeLessThan(1.02);
  });

  it('holds a rigid cake’s exponent at 0 or above, and says that it is not told from 0', () => {
    const noise = normalDeviates(9);
    const log = made({});
    let unclear = 0;
    for (let trial = 0; trial < 100; trial++) {
      const report = fitted(log.map(([volume, bar]) => [volume, bar + 0.03 * noise()] as const));
      expect(report.Exponent).toBeGreaterThanOrEqual(0);
      if (String(report.Remark).startsWith('The exponent is not told from 0')) unclear++;
    }
    expect(unclear).toBeGreaterThan(90);
  });

  it('says so where the log curves downward, where too little pressure was reached, and where nothing rises', () => {
    const candle = fitted(made({ septumRadius: 10 }));
    expect(candle.Exponent).toBe(0);
    expect(candle.Remark).toContain('a candle taken as flat');
    const early = made({ compressibility: 0.3 }).filter(([volume]) => volume < 400);
    expect(fitted(early).Remark).toContain('read far beyond the log');
    expect(call('FITCAKE', columnOf([0, 1, 2, 3]), columnOf([4, 3, 2, 1]), 50, 250, 2.8, 135.55)).toMatchObject({
      code: '#N/A',
    });
  });
});

describe('FITCAKES', () => {
  const MADE = { compressibility: 0.3, septumRadius: 0, precoatLoad: 0 };
  const logs = [60, 120].map((feed) => logOf(MADE, feed, 12));
  const rows = logs.flatMap((log, run) => log.map(([volume, bar]) => [run + 1, volume, bar, run === 0 ? 85 : 145]));
  const column = (index: number) => columnOf(rows.map((row) => row[index]));

  it('of one run is FITCAKE', () => {
    const one = byLabel(
      rowsOf(
        'FITCAKE',
        columnOf((logs[0] ?? []).map(([volume]) => volume)),
        columnOf((logs[0] ?? []).map(([, bar]) => bar)),
        50,
        250,
        2.8,
        85,
      ),
    );
    const volumes = columnOf((logs[0] ?? []).map(([volume]) => volume));
    const bars = columnOf((logs[0] ?? []).map(([, bar]) => bar));
    const [head, row] = rowsOf('FITCAKES', columnOf(volumes.map(() => 1)), volumes, bars, 50, 250, 2.8, 85);
    const at = (label: string) => row?.[(head as string[]).indexOf(label)] as number;
    expect(at('Resistance at 1 bar m/kg')).toBe(one.get('Resistance at 1 bar m/kg')?.[0]);
    expect(at('Exponent of all')).toBe(one.get('Exponent')?.[0]);
    expect(at('Rise bar/h')).toBe(one.get('Rise bar/h')?.[0]);
  });

  it('refuses solids that change within a run, and a run of two rows', () => {
    const solids = rows.map((row) => row[3]);
    const changed = columnOf(solids.with(3, 90));
    const call4 = (runs: unknown, given: unknown) => call('FITCAKES', runs, column(1), column(2), 50, 250, 2.8, given);
    expect(call4(column(0), changed)).toMatchObject({
      message: 'Solids to the cake must be the same in all rows of a run, but changes in run 1, row 4.',
    });
    expect(call4(columnOf(rows.map((row, index) => (index < 2 ? 7 : row[0]))), columnOf(solids))).toMatchObject({
      message: 'Run 7 has 2 rows; a run needs at least 3.',
    });
  });
});
