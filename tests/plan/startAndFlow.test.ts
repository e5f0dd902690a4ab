import { describe, expect, it } from 'vitest';
import { call } from '../functions/answers.js';
import { byLabel, type Changed, columnsOf, rowsOf } from './columns.js';

const report = (changed: Changed) => byLabel(rowsOf('RUNREPORT', ...columnsOf(changed)));
const figureOf = (changed: Changed, label: string) => report(changed).get(label)?.[0] as number;
const run = (changed: Changed) => figureOf(changed, 'Run hL');
const roomy: Changed = { cakeSpace: 30 };

describe('the start pressure drop', () => {
  it('follows flow and viscosity from what it was read at, in proportion', () => {
    const read = { ...roomy, startFlow: 200, startViscosity: 2.0 };
    // 0.6 bar × 250/200 × 2.8/2.0
    expect(run(read)).toBeCloseTo(run({ ...roomy, startPressure: 0.6 * 1.25 * 1.4 }), 9);
    expect(run({ ...roomy, startFlow: 250, startViscosity: 2.8 })).toBeCloseTo(run(roomy), 9);
  });

  it('grows with the precoat by what Darcy’s law says of the powder added', () => {
    // μ u Δw/(k ρ) with Δw = 0.4 kg/m² × 0.995 dry, in bar.
    const added = (0.0028 * (0.5 / 3600) * 0.4 * 0.995) / (0.1 * 9.869_233e-13 * 300) / 1e5;
    const more = { ...roomy, precoatLoad: 1200 };
    expect(run({ ...more, startPrecoat: 800 })).toBeCloseTo(run({ ...more, startPressure: 0.6 + added }), 3);
    const answer = call('RUNLENGTH', ...columnsOf({ ...fitted, startPrecoat: 800 }));
    expect(answer).toMatchObject({ message: expect.stringContaining('Start read at precoat needs Aid permeability') });
  });

  it('is seen by SENSITIVITY where the viscosity varies', () => {
    const swing = (changed: Changed) => {
      const low = columnsOf({ ...roomy, ...changed, viscosity: 2.4 });
      const high = columnsOf({ ...roomy, ...changed, viscosity: 3.2 });
      return byLabel(rowsOf('SENSITIVITY', ...low, high[1])).get('Viscosity at filter mPa·s')?.[2] as number;
    };
    expect(swing({ startViscosity: 2.8 })).toBeGreaterThan(1.05 * swing({}));
  });
});

const fitted: Changed = {
  aidPermeability: undefined,
  beerSolidsPermeability: undefined,
  stabiliserPermeability: undefined,
  cakeResistance: 1.5497e11,
};

describe('flow that is turned down at the pressure drop limit', () => {
  const down: Changed = { ...roomy, leastFlow: 125 };
  // On a candle the cake would outgrow any vessel before so much pressure were reached.
  const low = 1.5;

  it('gives a run until the least flow, in the time that Darcy’s law takes for it', () => {
    // Rigid, flat: Δp at full flow is a + b V, held at its limit by a flow of limit/(a + b V) of the full one.
    const full = run(roomy);
    const slope = (4.5 - 0.6) / full;
    const last = (2 * 4.5 - 0.6) / slope;
    expect(run(down)).toBeCloseTo(last, 6);
    const drop = (volume: number) => 0.6 * volume + (slope * volume ** 2) / 2;
    const time = full / 250 + (drop(last) - drop(full)) / 4.5 / 250;
    expect(figureOf(down, 'Run time h')).toBeCloseTo(time, 6);
    expect(figureOf(down, 'End pressure drop bar')).toBe(4.5);
    expect(figureOf(down, 'Rise at the end bar/h')).toBe(0);
  });

  it.each([{ septumRadius: 15 }, { compressibility: 0.4 }, { septumRadius: 6, compressibility: 0.3 }])(
    'holds the limit all the way with $septumRadius mm and an exponent of $compressibility',
    (changed) => {
      const rows = rowsOf(
        'RUNCURVE',
        ...columnsOf({ ...down, cakeSpace: 900, pressureLimit: low, ...changed }),
        400,
      ).slice(1) as number[][];
      const end = rows.at(-1) as number[];
      expect(Math.max(...rows.map(([, , bar]) => bar as number))).toBeLessThanOrEqual(low + 1e-9);
      // The flow of the last step, from volumes and times: half the full one.
      const before = rows.at(-2) as number[];
      const flow = ((end[0] as number) - (before[0] as number)) / ((end[1] as number) - (before[1] as number));
      expect(flow / 125).toBeCloseTo(1, 1);
      expect(run({ ...down, cakeSpace: 900, pressureLimit: low, ...changed })).toBeGreaterThan(
        run({ ...roomy, cakeSpace: 900, pressureLimit: low, ...changed }),
      );
    },
  );

  it('changes nothing where the cake space ends the run before, or at a least flow of the flow itself', () => {
    expect(run({ leastFlow: 100 })).toBe(run({}));
    expect(run({ ...roomy, leastFlow: 250 })).toBe(run(roomy));
  });

  it('leaves the best feed the least of a fine scan', () => {
    const best = byLabel(rowsOf('BESTFEED', ...columnsOf(down), 40, 200)).get('Least cost per hL')?.[0] as number;
    const [head, ...rows] = rowsOf('FEEDCURVE', ...columnsOf(down), 40, 200, 400);
    const at = (head as string[]).indexOf('Cost per hL');
    const scan = rows.map((row) => row[at] as number);
    expect(best).toBeLessThanOrEqual(Math.min(...scan) + 1e-9);
  });
});

describe('a year of more hours than a filter has', () => {
  const checked = (changed: Changed) => {
    const [labels, values] = columnsOf(changed);
    const said = call('PLANCHECK', labels, values) as string[][];
    return said[(labels as string[][]).findIndex(([label]) => label?.startsWith('Year volume'))]?.[0];
  };

  it('is refused by PLANCHECK and told by FILTRATIONCOST', () => {
    const busy: Changed = { yearVolume: 5_000_000 };
    expect(checked(busy)).toMatch(
      /^refused: Year volume takes 29\s?5\d\d h of filtering and turnaround, but one filter has 8760 h/,
    );
    expect(checked({})).toBe('usual');
    const beyond = (given: Changed) =>
      byLabel(rowsOf('FILTRATIONCOST', ...columnsOf(given))).get('Hours that one filter does not have h')?.[1];
    expect(beyond(busy)).toBeCloseTo(5_000_000 / 250 + (4 * 5_000_000) / run({}) - 8760, 6);
    expect(beyond({})).toBe(0);
  });

  it('is not asked of a plan that is not whole', () => {
    const [labels, values] = columnsOf({ yearVolume: 5_000_000 });
    const part = call('PLANCHECK', (labels as unknown[][]).slice(1), (values as unknown[][]).slice(1)) as string[][];
    expect(part.flat().filter((said) => said.startsWith('refused'))).toEqual([]);
  });
});
