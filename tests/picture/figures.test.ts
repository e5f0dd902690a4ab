import { describe, expect, it } from 'vitest';
import { thinned } from '../../taskpane/pane/picture/figures/fit.js';
import { columnsOf } from '../../taskpane/pane/picture/figures/spread.js';
import type { Mark, Picture } from '../../taskpane/pane/picture/picture.js';
import { answered, pictureOf } from './drawn.js';

const panels = (picture: Picture) => ('panels' in picture ? picture.panels : []);
const bars = (picture: Picture) => ('bars' in picture ? picture.bars : undefined);
const marks = <K extends Mark['kind']>(picture: Picture, panel: number, kind: K) =>
  (panels(picture)[panel]?.marks ?? []).filter((one): one is Extract<Mark, { kind: K }> => one.kind === kind);
const report = (id: string, label: string) => {
  const rows = answered(id) as readonly (readonly [string, number])[];
  return rows.find(([one]) => one === label)?.[1] as number;
};

describe('the picture of a run', () => {
  it('ends where RUNLENGTH ends, at the pressure and load that RUNCURVE gives there', async () => {
    const picture = await pictureOf('RUNCURVE');
    const [[length]] = answered('RUNLENGTH') as [[number]];
    const last = (answered('RUNCURVE') as number[][]).at(-1) as number[];
    for (const [panel, column] of [
      [0, 2],
      [1, 3],
    ] as const) {
      const end = marks(picture, panel, 'curve')[0]?.points.at(-1);
      expect(end?.x).toBeCloseTo(length, 9);
      expect(end?.y).toBeCloseTo(last[column] as number, 9);
    }
  });

  it('shows both limits and names what ends the run', async () => {
    const picture = await pictureOf('RUNCURVE');
    expect(marks(picture, 0, 'level')).toMatchObject([{ at: 4.5 }]);
    expect(marks(picture, 1, 'level')).toMatchObject([{ at: 6.5 }]);
    expect(marks(picture, 0, 'upright')).toMatchObject([{ text: 'ends: cake space' }]);
    expect(picture.summary).toContain('The cake space ends the run.');
  });

  it('says what the resistance rests on', async () => {
    const picture = await pictureOf('RUNCURVE');
    expect(picture.notes.map(({ text }) => text).join(' ')).toMatch(/model.*FITFEED.*vessel’s plate/);
  });
});

describe('the picture of a span of body feeds', () => {
  it('marks the optimum that BESTFEED finds, on the curve of the costs', async () => {
    const picture = await pictureOf('FEEDCURVE');
    const [spot] = marks(picture, 0, 'spot');
    expect(spot?.at.x).toBeCloseTo(report('BESTFEED', 'Body feed of least cost g/hL'), 9);
    expect(spot?.at.y).toBeCloseTo(report('BESTFEED', 'Least cost per hL'), 9);
    const costs = marks(picture, 0, 'curve')[0]?.points.map(({ y }) => y) ?? [];
    expect(Math.min(...costs)).toBeGreaterThanOrEqual(spot?.at.y as number);
  });
});

describe('the picture of a fit', () => {
  // A log about 0.6 + 0.0016 V, with readings off the line by known amounts that a line cannot take up.
  const off = [0.02, -0.02, -0.02, 0.02];
  const volumes = [0, 500, 1000, 1500];
  const bars = volumes.map((volume, row) => 0.6 + 0.0016 * volume + (off[row] as number));

  it('of a run log shows what the line leaves of each reading', async () => {
    const picture = await pictureOf('FITRUN', { volumes, bars });
    const left = marks(picture, 1, 'dots')[0]?.points.map(({ y }) => y) ?? [];
    expect(left).toHaveLength(4);
    for (const [row, one] of left.entries()) expect(one).toBeCloseTo(off[row] as number, 12);
  });

  it('shows no residual where only the arithmetic leaves one', async () => {
    for (const id of ['FITRUN', 'FITLEAF', 'LADDERFIT']) {
      const left = marks(await pictureOf(id), 1, 'dots')[0]?.points ?? [];
      expect(left.map(({ y }) => y)).toEqual(left.map(() => 0));
    }
    const [ratio] = marks(await pictureOf('FITCOMPRESSION'), 1, 'dots');
    expect(ratio?.points.map(({ y }) => y)).toEqual([1, 1]);
  });

  it('bends with a round septum', async () => {
    const shape = { septumRadius: 12.5, cakeDensity: 300, precoatLoad: 800 };
    const picture = await pictureOf('FITRUN', { volumes, bars: [0.6, 1.9, 2.8, 3.5], ...shape });
    const points = marks(picture, 0, 'curve')[0]?.points ?? [];
    const [first, middle, last] = [points[0], points[(points.length - 1) / 2], points.at(-1)];
    expect(middle?.y).toBeGreaterThan(((first?.y as number) + (last?.y as number)) / 2);
  });

  it('of a leaf test has the time for each volume above the volume', async () => {
    const [dots] = marks(await pictureOf('FITLEAF'), 0, 'dots');
    // 3 s for the first litre are 3000 s/m³.
    expect(dots?.points[0]).toEqual({ x: 1, y: expect.closeTo(3000, 9) });
  });

  it('of a power law has logarithmic axes and goes through the resistance at 1 bar', async () => {
    const picture = await pictureOf('FITCOMPRESSION');
    expect('x' in picture && picture.x.logarithmic).toBe(true);
    expect(marks(picture, 0, 'curve')[0]?.points[0]).toEqual({ x: 1, y: expect.closeTo(1e11, 0) });
  });

  it('of a long log draws a part of the points, both ends included, and says so', async () => {
    const long = Array.from({ length: 5000 }, (_, row) => row);
    const picture = await pictureOf('FITRUN', { volumes: long, bars: long.map((one) => 1 + one / 1000) });
    const points = marks(picture, 0, 'dots')[0]?.points ?? [];
    expect(points.length).toBeLessThan(1000);
    expect([points[0]?.x, points.at(-1)?.x]).toEqual([0, 4999]);
    expect(picture.notes[0]?.text).toBe('500 of 5,000 points are drawn; the fit uses them all.');
    expect(thinned([1, 2, 3], 3)).toEqual([1, 2, 3]);
  });
});

describe('the pictures of a saving', () => {
  it('put both plans side by side, item by item, in the figures of SAVING', async () => {
    const picture = await pictureOf('SAVING');
    const rows = (answered('SAVING') as (string | number)[][]).slice(1, -1);
    const drawn = bars(picture)?.lines ?? [];
    for (const { label, bars: pair } of drawn) {
      const row = rows.find(([item]) => item === label);
      expect(pair.map(({ to }) => to)).toEqual([
        expect.closeTo(row?.[1] as number),
        expect.closeTo(row?.[2] as number),
      ]);
    }
    expect(drawn.map(({ label }) => label)).toEqual(
      rows.filter((row) => row[1] !== 0 || row[2] !== 0).map(([item]) => item),
    );
  });

  it('count every sample once, and mark P10, P50 and P90 as SAVINGSPREAD gives them', async () => {
    const picture = await pictureOf('SAVINGSPREAD');
    const columns = marks(picture, 0, 'columns')[0]?.columns ?? [];
    expect(columns.reduce((sum, { height }) => sum + height, 0)).toBeCloseTo(1, 9);
    const marked = marks(picture, 0, 'upright').filter(({ text }) => text !== '');
    expect(marked.map(({ at }) => at)).toEqual(
      ['P10', 'P50', 'P90'].map((name) => expect.closeTo(report('SAVINGSPREAD', `Yearly saving, ${name}`), 6)),
    );
  });

  it('count values into columns of one width, the largest into the last', () => {
    expect(columnsOf([0, 1, 1, 4], 4).map(({ height }) => height)).toEqual([0.25, 0.5, 0, 0.25]);
    expect(columnsOf([3, 3])).toEqual([{ from: 3, to: 3, height: 1 }]);
  });

  it('show how far each label moves the cost, from the middle to both ends, widest first', async () => {
    const picture = await pictureOf('SENSITIVITY');
    const rows = (answered('SENSITIVITY') as (string | number)[][]).slice(1, -2);
    const drawn = bars(picture);
    expect(drawn?.lines.map(({ bars: ends }) => ends.map(({ to }) => to))).toEqual(
      rows.map((row) => [expect.closeTo(row[1] as number, 9), expect.closeTo(row[2] as number, 9)]),
    );
    const middle = (answered('SENSITIVITY') as (string | number)[][]).at(-2)?.[1] as number;
    expect(drawn?.lines.flatMap(({ bars: ends }) => ends.map(({ from }) => from))).toEqual(
      rows.flatMap(() => [expect.closeTo(middle, 9), expect.closeTo(middle, 9)]),
    );
  });
});
