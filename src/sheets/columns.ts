import { type Line, titles, UNIT } from './layout.js';
import { SOURCE_TITLE } from './provenance.js';

/** Where the columns stand: what, one or more figures, unit, a judgement of each, whose they are, and what is said of them. */
export interface Columns {
  readonly figures: readonly string[];
  readonly unit: number;
  readonly judgement: number;
  /** The user’s own words. */
  readonly source: number;
  readonly about: number;
}

export function columnsOf(figures: readonly string[]): Columns {
  const unit = figures.length + 1;
  const source = unit + 1 + figures.length;
  return { figures, unit, judgement: unit + 1, source, about: source + 1 };
}

/** Over what is said of a quantity. */
export const EXPLANATIONS = 'What it is';

const judged = (figure: string): string => `Judged ${figure.toLowerCase()}`;

export const columnTitles = ({ figures }: Columns): Line =>
  titles(
    [
      'Quantity',
      ...figures,
      UNIT,
      ...(figures.length === 1 ? ['Judged'] : figures.map(judged)),
      SOURCE_TITLE,
      EXPLANATIONS,
    ],
    [1, figures.length + 1],
  );

/** Narrow enough that figures and their judgements stand beside each other and the pane on a laptop. */
export const widthsOf = ({ figures }: Columns, figure = 17): readonly number[] => [
  41,
  ...figures.map(() => figure),
  14,
  ...figures.map((one) => Math.max(22, judged(one).length + 1)),
  24,
  64,
];
