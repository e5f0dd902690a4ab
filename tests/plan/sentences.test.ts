import { describe, expect, it } from 'vitest';
import { call } from '../functions/answers.js';
import { columnsOf, rowsOf, sentenceOf } from './columns.js';
import { planMatrices } from './sheet.js';

const [labels, values] = planMatrices();

describe('what the plan functions say', () => {
  it('names the range that was not handed over', () => {
    expect(sentenceOf('RUNLENGTH')).toBe('#VALUE! Labels must be a range of labels, but nothing was given.');
    expect(sentenceOf('RUNLENGTH', labels)).toMatch(/^#VALUE! Values must be a range beside Labels, but nothing/);
    expect(sentenceOf('RANKQUOTES')).toBe('#VALUE! Names must be a range of texts, but nothing was given.');
  });

  it('judges a label that may stay blank as usual while it is', () => {
    const judged = [['Filter area'], ['Cake resistance'], ['Beer flow']];
    expect(call('PLANCHECK', judged, [[50], [null], [250]])).toEqual([['usual'], ['usual'], ['usual']]);
    expect(call('PLANCHECK', judged, [[50], [-1], [250]])).toEqual([
      ['usual'],
      [expect.stringMatching(/^refused: Cake resistance must be/)],
      ['usual'],
    ]);
  });

  it('says at which end of a guess there is no run, and what the last row counts', () => {
    const rows = rowsOf('SENSITIVITY', ...columnsOf({ cakeSpace: 0.5 }, { cakeSpace: 6.5 }));
    const space = rows.find(([label]) => label === 'Cake space kg/m²');
    expect(space?.at(-1)).toBe('No run at its low end.');
    expect(space?.[1]).not.toEqual(expect.any(Number));
    expect(rows.find(([label]) => label === 'All in the middle')?.at(-1)).toBe('');
    expect(rows.at(-1)?.at(-1)).toBe('A number of labels, not a cost.');
  });

  it('says both that the best feed lies at a bound and what today’s costs', () => {
    const remark = (least: number, most: number, feed = 90) => {
      const [today, figures] = planMatrices({ bodyFeed: feed });
      return String(rowsOf('BESTFEED', today, figures, least, most).at(-1)?.[1]);
    };
    expect(remark(85, 250)).toMatch(
      /^At the least body feed allowed: clarity, not cost, sets the feed\. Today’s feed costs [\d.]+ % more\.$/,
    );
    expect(remark(50, 60, 80)).toMatch(
      /^Cost still falls at the most body feed allowed, 60 g\/hL\. Today’s feed lies outside the range and costs less\.$/,
    );
    expect(remark(90, 250)).toBe(
      'At the least body feed allowed: clarity, not cost, sets the feed. Nothing to gain: today’s feed costs as little.',
    );
    expect(values.length).toBe(labels.length);
  });
});
