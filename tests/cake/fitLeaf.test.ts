import { describe, expect, it } from 'vitest';
import { call } from '../functions/answers.js';
import { integrate } from '../plan/integrate.js';
import { columnOf, reportOf } from './log.js';

describe('FITLEAF', () => {
  it('gives back cake and medium of a test that was integrated step by step', () => {
    const [resistance, medium, area, pressure, viscosity, solids] = [1.5e11, 8e10, 0.05, 0.8e5, 1.2e-3, 20];
    const rate = (volume: number) => (area * pressure) / (viscosity * (medium + (resistance * solids * volume) / area));
    const seconds = [20, 60, 150, 300, 600, 900];
    const litres = seconds.map((time) => 1000 * integrate((_, volume) => rate(volume), 0, 0, time));
    const report = reportOf('FITLEAF', seconds, litres, 0.05, 0.8, 1.2, 20);
    expect((report['Cake resistance m/kg'] as number) / resistance).toBeCloseTo(1, 8);
    expect((report['Medium resistance 1/m'] as number) / medium).toBeCloseTo(1, 7);
  });

  it('has no standard errors on two rows, and says why', () => {
    const answer = call('FITLEAF', columnOf([300, 600]), columnOf([0.25, 0.4]), 0.05, 0.713, 1, 1) as unknown[][];
    const error = answer.find(([label]) => label === 'Cake resistance, standard error m/kg')?.[1];
    expect(error).toMatchObject({ code: '#N/A', message: 'Two points leave no freedom to tell a standard error.' });
  });

  it('remarks on a medium that comes out below 0', () => {
    const report = reportOf('FITLEAF', [1, 4.5, 10.2], [1, 2, 3], 0.05, 1, 1, 10) as unknown as Record<string, string>;
    expect(report.Remark).toContain('below 0, which cannot be');
  });
});
