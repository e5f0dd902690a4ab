import { describe, expect, it } from 'vitest';
import { starterSheets } from '../../src/sheets/index.js';
import { en } from '../../taskpane/texts/en.js';
import { datesOfBlock } from '../../taskpane/workbook/entry/blockDates.js';
import { notationOf } from '../../taskpane/workbook/entry/notation.js';
import { looksLikeNumber, numberInText } from '../../taskpane/workbook/entry/textNumber.js';
import { turnIntoNumbers } from '../../taskpane/workbook/grid/textNumbers.js';
import { calculateCells } from './headless.js';

const writing = (locale: string) => ({ notation: notationOf(locale), words: en.entry });

describe('a text that looks like a number', () => {
  it.each(['12.5', '12,5', ' 1.234,5 ', '-3', '€1.95', '1,95 €', '(500)', '12 %', '27.11.2026', '2026-11-27 08:30'])(
    'is seen in whichever notation it is written: %s',
    (text) => {
      for (const locale of ['en-GB', 'de-DE']) expect(looksLikeNumber(text, writing(locale))).toBe(true);
    },
  );

  it.each([
    '',
    '5-10',
    '0012',
    '12E5',
    '3/4',
    '27.11.',
    '1234567890123456',
    '12 g/hL',
    'LOT 7',
    '1.2.3.4',
    '#N/A',
    '-',
  ])('is none where a number would lose what it says, or nobody can tell: %s', (text) => {
    for (const locale of ['en-GB', 'de-DE']) expect(looksLikeNumber(text, writing(locale))).toBe(false);
  });

  it('is read by the mark that is settled, and stays a text where that is another', () => {
    expect(numberInText('1.234', writing('de-DE'))?.value).toBe(1234);
    expect(numberInText('12.5', writing('de-DE'))).toBeUndefined();
  });

  it('takes no longer for a long text than a glance', () => {
    const long = `${'1 '.repeat(200_000)}x`;
    const before = process.cpuUsage().user;
    expect(looksLikeNumber(long, writing('en-GB'))).toBe(false);
    expect((process.cpuUsage().user - before) / 1000).toBeLessThan(100);
  });

  it('stands in no starter sheet', () => {
    const texts = new Set(starterSheets.flatMap(({ rows }) => rows.flat().flatMap(({ text }) => text ?? [])));
    const [german, english] = [writing('de-DE'), writing('en-GB')];
    expect([...texts].filter((text) => looksLikeNumber(text, german) || looksLikeNumber(text, english))).toEqual([]);
    expect(texts.size).toBeGreaterThan(100);
  });
});

describe('the dates of a block', () => {
  it.each([
    ['en-GB', ['01/02/2026', '02/13/2026'], 'mdy', undefined],
    ['en-US', ['01/02/2026', '13/02/2026 08:30'], 'dmy', undefined],
    ['en-GB', ['01/02/2026'], 'dmy', '01/02/2026'],
    ['en-US', ['03/03/2026', '01/02/2026'], 'mdy', '01/02/2026'],
    ['en-US', ['01.02.2026'], 'dmy', undefined],
    ['en-US', ['01-02-2026', '25-02-2026'], 'dmy', undefined],
    ['en-US', ['13/02/2026', '02/13/2026'], 'mdy', undefined],
    ['en-GB', ['2026-02-01', 'beer'], 'dmy', undefined],
  ] as const)('have the order that they show, or that of %s: %j', (locale, texts, order, open) => {
    const settled = datesOfBlock(texts, notationOf(locale).dates);
    expect([settled.dates.order, settled.open]).toEqual([order, open]);
  });
});

describe('turning a block of texts into numbers', () => {
  it('reads all of the table by the mark that one of them shows', async () => {
    const cells = await calculateCells([
      ['beer', 'turbidity', 'day', 'sum'],
      ['lager', '1,234', '01.02.2026', '=SUM(B2:B4)'],
      ['ale', '0,75', '28.02.2026'],
      ['stout', 2, 'none'],
    ]);
    const at = (address: string) => cells.at(address).value;
    expect(at('D2')).toBe(2);
    const place = { kind: 'range', sheet: 'Sheet 1', top: 1, bottom: 1, left: 1, right: 1 } as const;
    const turned = turnIntoNumbers(cells.grid, writing('en-GB'), place);
    expect(turned).toMatchObject({ count: 4, left: 0, shownBy: '0,75' });
    expect(turned.place).toMatchObject({ top: 1, bottom: 2, left: 1, right: 2 });
    await cells.grid.api.getFormula().onCalculationResultApplied(10_000);
    expect([at('B2'), at('B3'), at('C2'), at('C3'), at('C4'), at('A2')]).toEqual([
      1.234,
      0.75,
      46054,
      46081,
      'none',
      'lager',
    ]);
    expect(at('D2')).toBe(3.984);
    cells.dispose();
  });

  it('leaves texts that contradict the others, and says how many', async () => {
    const cells = await calculateCells([['12.5', '12,5', '13,5']]);
    const turned = turnIntoNumbers(cells.grid, writing('de-DE'), {
      ...{ kind: 'range', sheet: 'Sheet 1', top: 0, bottom: 0, left: 1, right: 1 },
    });
    expect(turned).toMatchObject({ count: 2, left: 1 });
    expect(cells.at('A1').value).toBe('12.5');
    cells.dispose();
  });
});
