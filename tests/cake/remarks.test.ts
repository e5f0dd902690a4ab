import { describe, expect, it } from 'vitest';
import { logRemark } from '../../src/cake/logRemark.js';
import { cell, sentence } from '../checks/worksheet.js';
import { call } from '../functions/answers.js';

const column = (values: readonly number[]) => values.map((value) => [value]);
const report = (id: string, ...args: readonly (number | readonly number[])[]) =>
  new Map(
    call(id, ...args.map((one) => (typeof one === 'number' ? [[one]] : column(one)))) as [string, number | string][],
  );

/** A log in order: equal steps of a hL in m³, each with a greater pressure. */
const log = (rows: number) => ({
  volumes: Float64Array.from({ length: rows }, (_, row) => row / 10),
  bars: Float64Array.from({ length: rows }, (_, row) => 1e5 + row),
});

describe('the remark on a log', () => {
  it('is none on one in order, whose first or only zero is a start', () => {
    const { volumes, bars } = log(40);
    expect(logRemark(volumes, bars)).toBe('in order');
    expect(logRemark(volumes, bars.with(0, 0))).toBe('in order');
    expect(logRemark(volumes, bars.with(0, 0).with(1, 0))).toBe(
      'the pressure drop is 0 or blank in 2 rows. All rows were used: take out what does not belong',
    );
  });

  it('counts one row as one, and lists all that is odd', () => {
    const { volumes, bars } = log(20);
    expect(logRemark(volumes.with(5, 0.4), bars)).toBe(
      'the volume stands still in 1 row (pump stopped, or logged twice). All rows were used: take out what does not belong',
    );
    expect(logRemark(volumes.with(5, 0.35).with(8, 0.7), bars)).toMatch(
      /^the volume falls in 1 row .*; the volume stands/,
    );
  });

  it('calls a gauge stuck from five equal rows, and from a tenth of a long log', () => {
    const short = log(40);
    expect(logRemark(short.volumes, short.bars.fill(2e5, 10, 14))).toBe('in order');
    expect(logRemark(short.volumes, short.bars.fill(2e5, 10, 15))).toContain('the same through 5 rows');
    const long = log(100);
    expect(logRemark(long.volumes, long.bars.fill(2e5, 10, 19))).toBe('in order');
    expect(logRemark(long.volumes, long.bars.fill(2e5, 10, 20))).toContain('the same through 10 rows');
    // A pump that stands still shows one pressure: that is no stuck gauge.
    const stopped = log(40);
    expect(logRemark(stopped.volumes.fill(1, 10, 20), stopped.bars.fill(2e5, 10, 20))).not.toContain('gauge');
  });

  it('calls a step a gap from a tenth of the log and ten mean steps, in a log that never falls', () => {
    const jump = (rows: number, by: number) => {
      const { volumes, bars } = log(rows);
      return logRemark(
        volumes.map((one, row) => (row < rows / 2 ? one : one + by)),
        bars,
      );
    };
    expect(jump(200, 1.9)).toBe('in order');
    expect(jump(200, 2.3)).toContain('a gap of 24 hL');
    expect(jump(20, 1)).toBe('in order');
    const { volumes, bars } = log(200);
    expect(
      logRemark(
        volumes.map((one, row) => (row < 100 ? one + 100 : one)),
        bars,
      ),
    ).not.toContain('gap');
  });
});

describe('standard errors', () => {
  it('stand in one proportion to rise and resistance, which come from one slope', () => {
    const fit = report('FITRUN', [0, 500, 1000, 1500], [0.6, 1.5, 2.1, 3], 50, 250, 2.8, 135.55);
    const share = (label: string, unit: string) =>
      Number(fit.get(`${label}, standard error ${unit}`)) / Number(fit.get(`${label} ${unit}`));
    expect(share('Rise', 'bar/h') / share('Rise', 'bar/hL')).toBeCloseTo(1, 9);
    expect(share('Cake resistance', 'm/kg') / share('Rise', 'bar/hL')).toBeCloseTo(1, 9);
  });
});

describe('FITLEAF', () => {
  const leaf = (seconds: readonly number[], litres: readonly number[]) => [seconds, litres, 0.05, 0.7, 1, 20] as const;

  it('has no answer where volumes are the same or time per volume does not grow', () => {
    expect(sentence('FITLEAF', ...leaf([10, 20, 30], [1, 1, 1]))).toBe(
      '#N/A All rows hold the same volume, so no resistance can be told.',
    );
    const flat = '#N/A Time per volume does not grow with the volume, so the test tells no cake resistance.';
    expect(sentence('FITLEAF', ...leaf([10, 20, 30], [1, 2, 3]))).toBe(flat);
    expect(sentence('FITLEAF', ...leaf([10, 18, 24], [1, 2, 3]))).toBe(flat);
  });

  it('says on which side the first point lies, with the intercept without it', () => {
    const litres = [1, 2, 3, 4, 5, 6];
    const first = (pull: number) => {
      const seconds = litres.map((v, row) => v * (5 + 2 * v + (row === 0 ? pull : 0) + 0.001 * (row % 2)));
      return report('FITLEAF', ...leaf(seconds, litres)).get('First point');
    };
    expect(first(0)).toBe('in line with the others');
    expect(first(3)).toMatch(/^lies above the line through the others and pulls the intercept: \d+ s\/m³ without it$/);
    expect(first(-3)).toMatch(/^lies below the line/);
  });

  it('has nothing to remark on a medium of its own', () => {
    const rows = [1, 2, 3, 4];
    expect(
      report(
        'FITLEAF',
        ...leaf(
          rows.map((v) => v * (5 + 2 * v)),
          rows,
        ),
      ).get('Remark'),
    ).toBe('none');
  });
});

describe('fits without an answer', () => {
  it('say why', () => {
    expect(sentence('FITCOMPRESSION', [1, 1, 1], [1e11, 2e11, 3e11])).toBe(
      '#N/A All pressures are the same, so no compressibility can be told.',
    );
    expect(sentence('RISERATE', [1, 1, 1], [1, 2, 3])).toBe(
      '#N/A All readings stand at the same time, so no rise can be told.',
    );
    expect(sentence('FITRUN', [0, 1, 2], [3, 2, 1], 50, 250, 2.8, 135)).toBe(
      '#N/A The pressure drop does not rise over this log, so it tells no cake resistance.',
    );
  });

  it('of a mix leave shares of 0 out and refuse only all of them', () => {
    expect(cell('MIXPERMEABILITY', [1, 0], [0.5, 0.1])).toBeCloseTo(0.5, 12);
  });
});
