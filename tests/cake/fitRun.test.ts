import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CellError, call } from '../functions/answers.js';
import { normalDeviates } from '../numerics/independent.js';
import { planMatrices } from '../plan/sheet.js';
import { columnOf, reportOf, rows } from './log.js';

const FILTER = [50, 250, 2.8, 135.55] as const;
const noise = normalDeviates(11);

/** A log of the invented plan's filter: 0.6 bar, then so many bar per hL. */
const straight = (count: number, scatter = 0) => {
  const volumes = rows(count).map((row) => (2000 * row) / (count - 1));
  return { volumes, bars: volumes.map((volume) => 0.6 + 0.0016 * volume + scatter * noise()) };
};

const reported = ({ volumes, bars }: { volumes: number[]; bars: number[] }, ...septum: number[]) =>
  reportOf('FITRUN', volumes, bars, ...FILTER, ...septum);
const remarks = (log: { volumes: number[]; bars: number[] }) => {
  const report = reported(log) as unknown as Record<string, string>;
  return [report['Shape of the log'], report['First point'], report['Rows of the log']];
};

describe('FITRUN', () => {
  it('finds start, rises and resistance of a straight log', () => {
    const report = reported(straight(9));
    expect(report['Start pressure drop bar']).toBeCloseTo(0.6, 12);
    expect(report['Rise bar/hL']).toBeCloseTo(0.0016, 12);
    expect(report['Rise bar/h']).toBeCloseTo(0.4, 10);
    // α = slope / (μ u) with the slope per kg/m²: 160 Pa/hL over 135.55 g/hL on 50 m².
    expect(report['Cake resistance m/kg']).toBeCloseTo(160 / (0.13555 / 50) / (2.8e-3 * (5 / 36_000)), -3);
    expect(report['R²']).toBeCloseTo(1, 12);
    expect(report.Rows).toBe(9);
    expect(remarks(straight(9))).toEqual(['straight', 'in line with the others', 'in order']);
  });

  it.each([
    ['flat', {}, []],
    ['on a candle', { septumRadius: 15 }, [15, 300, 796]],
    ['on a thin candle without precoat', { septumRadius: 6, precoatLoad: 0, aidMoisture: 0 }, [6, 300, 0]],
  ])('gives back the resistance that RUNCURVE was made with: %s', (_, changed, septum) => {
    const fitted = {
      cakeResistance: 2.5e11,
      aidPermeability: undefined,
      beerSolidsPermeability: undefined,
      stabiliserPermeability: undefined,
    };
    const curve = call('RUNCURVE', ...planMatrices({ ...changed, ...fitted }), 12) as number[][];
    const solids = 'aidMoisture' in changed ? 136 : 135.55;
    const log = {
      volumes: curve.slice(1).map(([volume]) => volume as number),
      bars: curve.slice(1).map((row) => row[2] as number),
    };
    const report = reportOf('FITRUN', log.volumes, log.bars, 50, 250, 2.8, solids, ...septum);
    expect((report['Cake resistance m/kg'] as number) / 2.5e11).toBeCloseTo(1, 9);
    expect(report['Start pressure drop bar']).toBeCloseTo(0.6, 9);
    const risen = (log.bars[11] as number) - (log.bars[0] as number);
    expect(report['Rise bar/hL']).toBeCloseTo(risen / (log.volumes[11] as number), 10);
    expect((report as unknown as Record<string, string>)['Shape of the log']).toBe('straight');
  });

  it('has standard errors that hold the truth two times in three, and more the fewer rows there are', () => {
    let held = 0;
    for (let trial = 0; trial < 400; trial++) {
      const report = reported(straight(40, 0.05));
      const off = Math.abs((report['Start pressure drop bar'] as number) - 0.6);
      if (off < (report['Start pressure drop, standard error bar'] as number)) held++;
    }
    expect(held / 400).toBeGreaterThan(0.6);
    expect(held / 400).toBeLessThan(0.76);
  });

  it('says that a compressible cake curves the log upward, though not that noise does', () => {
    const curve = call('RUNCURVE', ...planMatrices({ compressibility: 0.2 }), 20) as number[][];
    const compressible = {
      volumes: curve.slice(1).map(([volume]) => volume as number),
      bars: curve.slice(1).map((row) => row[2] as number),
    };
    expect(remarks(compressible)[0]).toMatch(/^curves upward: a compressible cake, blinding, or beer solids that rose/);
    for (let trial = 0; trial < 30; trial++) expect(remarks(straight(100, 0.03))[0]).toBe('straight');
  });

  it('says that a candle taken as flat curves the log downward', () => {
    const curve = call('RUNCURVE', ...planMatrices({ septumRadius: 12 }), 20) as number[][];
    const round = {
      volumes: curve.slice(1).map(([volume]) => volume as number),
      bars: curve.slice(1).map((row) => row[2] as number),
    };
    expect(remarks(round)[0]).toMatch(
      /^curves downward: a round septum taken as flat, flow that fell, or beer that cleared/,
    );
  });

  it('says where the first point pulls the start, and uses it all the same', () => {
    const log = straight(20, 0.001);
    log.bars[0] = 1.4;
    const [, first] = remarks(log);
    expect(first).toMatch(
      /^lies above the line through the others and pulls the start pressure drop: 0\.\d+ bar without it$/,
    );
    expect(Number(first?.match(/([\d.]+) bar/)?.[1])).toBeCloseTo(0.6, 2);
    expect(reported(log)['Start pressure drop bar']).toBeGreaterThan(0.65);
    const shuffled = { volumes: log.volumes.toReversed(), bars: log.bars.toReversed() };
    expect(remarks(shuffled)[1]).toBe(first);
  });

  it('names what is odd in a log, row counts included', () => {
    const odd = straight(60, 0.01);
    odd.volumes[10] = odd.volumes[9] as number;
    odd.volumes[11] = odd.volumes[9] as number;
    expect(remarks(odd)[2]).toContain('the volume stands still in 2 rows (pump stopped, or logged twice)');

    const back = straight(60, 0.01);
    [back.volumes[20], back.volumes[30]] = [back.volumes[30] as number, back.volumes[20] as number];
    expect(remarks(back)[2]).toContain('the volume falls in 2 rows (out of order, or more than one run)');

    const stuck = straight(60, 0.01);
    stuck.bars.fill(1.5, 20, 32);
    expect(remarks(stuck)[2]).toContain('the gauge shows the same through 12 rows');

    const gap = straight(60, 0.01);
    gap.volumes.splice(20, 25);
    gap.bars.splice(20, 25);
    expect(remarks(gap)[2]).toMatch(/a gap of 881\.4 hL/);

    const blank = straight(60, 0.01);
    blank.bars.fill(0, 40, 43);
    expect(remarks(blank)[2]).toContain('the pressure drop is 0 or blank in 3 rows');
    expect(remarks(blank)[2]).toMatch(/All rows were used: take out what does not belong$/);
  });

  it('does not mind in which order the rows stand', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(rows(30), { minLength: 30 }), (order) => {
        const log = straight(30);
        const mixed = {
          volumes: order.map((row) => log.volumes[row] as number),
          bars: order.map((row) => log.bars[row] as number),
        };
        expect(reported(mixed)['Cake resistance m/kg']).toBeCloseTo(
          reported(log)['Cake resistance m/kg'] as number,
          -3,
        );
      }),
      { numRuns: 20 },
    );
  });

  it('takes 100 000 rows', () => {
    const report = reported(straight(100_000, 0.02));
    expect(report.Rows).toBe(100_000);
    expect(report['Rise bar/h']).toBeCloseTo(0.4, 3);
  });

  it('refuses a candle without cake density, and a log too short', () => {
    const { volumes, bars } = straight(5);
    expect(call('FITRUN', columnOf(volumes), columnOf(bars), ...FILTER, 15)).toMatchObject({
      code: '#VALUE!',
      message: 'Cake density is needed with a septum radius: give it, or a radius of 0 for a flat septum.',
    });
    expect(call('FITRUN', columnOf([0, 1]), columnOf([1, 2]), ...FILTER)).toMatchObject({
      message: expect.stringContaining('at least 3 rows'),
    });
  });

  it('has no answer where the volume never changes or the pressure never rises', () => {
    const none = (volumes: number[], bars: number[]) => call('FITRUN', columnOf(volumes), columnOf(bars), ...FILTER);
    expect(none([5, 5, 5], [1, 2, 3])).toEqual(
      new CellError('#N/A', 'All volumes are the same, so no rise can be told.'),
    );
    expect(none([0, 1, 2], [3, 2, 1])).toMatchObject({ code: '#N/A' });
    expect(none([0, 1, 2], [1, 1, 1])).toMatchObject({ code: '#N/A' });
  });
});
