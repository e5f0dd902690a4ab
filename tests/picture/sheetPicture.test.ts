import { describe, expect, it } from 'vitest';
import type { ShownChart } from '../../taskpane/host/shownChart.js';
import { formatsFor } from '../../taskpane/pane/formats.js';
import { sheetPicture } from '../../taskpane/pane/picture/sheetPicture.js';
import { en } from '../../taskpane/texts/en.js';

const formats = formatsFor('en-GB');
const drawn = (chart: Partial<ShownChart>) =>
  sheetPicture(
    {
      title: 'A chart',
      kind: 'lines',
      across: { title: 'Run' },
      upwards: { title: 'bar' },
      series: [],
      place: 'D1:H9',
      ...chart,
    },
    en.charts,
    formats,
  );

describe('a chart of a sheet in the pane', () => {
  it('leaves out what is blank, refused or text, and draws the rest', () => {
    const picture = drawn({ series: [{ name: 'Now', across: [0, 1, 2, null], upwards: [1, null, '#VALUE!', 4] }] });
    expect(picture && 'panels' in picture && picture.panels[0]?.marks).toEqual([
      { kind: 'curve', points: [{ x: 0, y: 1 }], set: 0 },
    ]);
    expect(picture?.table.rows).toEqual([['Now', 0, 1]]);
  });

  it('has no picture where no cell holds a figure', () => {
    expect(drawn({ series: [{ name: 'Now', across: [null], upwards: ['#VALUE!'] }] })).toBeUndefined();
  });

  it('gives a fit the look of the readings before it, and names all of them', () => {
    const line = { across: [0, 1], upwards: [1, 2] };
    const picture = drawn({
      kind: 'points',
      series: [
        { name: 'Old', ...line },
        { name: 'Fit, old', kind: 'lines', ...line },
        { name: 'New', ...line },
        { name: 'Fit, new', kind: 'lines', ...line },
      ],
    });
    expect(picture && 'panels' in picture && picture.legend).toEqual([
      { text: 'Old', kind: 'dots', set: 0 },
      { text: 'Fit, old', kind: 'curve', set: 0 },
      { text: 'New', kind: 'dots', set: 1 },
      { text: 'Fit, new', kind: 'curve', set: 1 },
    ]);
  });

  it('puts the bars of two series at one name side by side', () => {
    const picture = drawn({
      kind: 'bars',
      series: [
        { name: 'Now', across: ['Beer 1', 'Beer 2'], upwards: [3, 4] },
        { name: 'Proposed', across: ['Beer 1', 'Beer 2'], upwards: [2, null] },
      ],
    });
    expect(picture && 'bars' in picture && picture.bars.lines).toEqual([
      {
        label: 'Beer 1',
        bars: [
          { set: 0, from: 0, to: 3 },
          { set: 1, from: 0, to: 2 },
        ],
      },
      { label: 'Beer 2', bars: [{ set: 0, from: 0, to: 4 }] },
    ]);
    expect(picture?.summary).toBe('Now: 3 to 4 (2 figures). Proposed: 2.');
  });
});
