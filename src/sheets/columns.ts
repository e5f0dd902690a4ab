import { type Line, titles, UNIT } from './layout.js';

/** Where the columns stand: what, one or more figures, unit, a judgement of each figure, and its source. */
export interface Columns {
  readonly figures: readonly string[];
  readonly unit: number;
  readonly judgement: number;
  readonly source: number;
}

export function columnsOf(figures: readonly string[]): Columns {
  const unit = figures.length + 1;
  return { figures, unit, judgement: unit + 1, source: unit + 1 + figures.length };
}

export const columnTitles = ({ figures }: Columns): Line =>
  titles(
    [
      'Quantity',
      ...figures,
      UNIT,
      ...figures.map((one) => (figures.length === 1 ? 'Judgement' : `Judgement: ${one.toLowerCase()}`)),
      'Where the figure comes from',
    ],
    [1, figures.length + 1],
  );

export const widthsOf = ({ figures }: Columns): readonly number[] => [
  42,
  ...figures.map(() => 18),
  16,
  ...figures.map(() => 26),
  64,
];
