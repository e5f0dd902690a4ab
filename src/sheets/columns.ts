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

const judged = (figure: string): string => `Judged ${figure.toLowerCase()}`;

export const columnTitles = ({ figures }: Columns): Line =>
  titles(
    [
      'Quantity',
      ...figures,
      UNIT,
      ...(figures.length === 1 ? ['Judged'] : figures.map(judged)),
      'Where the figure comes from',
    ],
    [1, figures.length + 1],
  );

/** Narrow enough that figures and their judgements stand beside each other and the pane on a laptop. */
export const widthsOf = ({ figures }: Columns, figure = 17): readonly number[] => [
  41,
  ...figures.map(() => figure),
  14,
  ...figures.map((one) => Math.max(15, judged(one).length + 1)),
  64,
];
