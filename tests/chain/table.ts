import { chained } from './made.js';

const SEPTA = [
  ['flat', 0],
  ['candle, 15 mm', 15],
] as const;

/** The chain in figures, as a table for people: made runs, their fits, the plan with what was fitted. */
export function chainTable(): string {
  const rows = SEPTA.flatMap(([name, septumRadius]) =>
    [0, 0.3, 0.6].map((compressibility) => {
      const { truth, found } = chained({ compressibility, septumRadius, precoatLoad: 800 }, 'FITCAKES');
      const cells = [truth.run.toFixed(1), found.run.toFixed(1), truth.best.toFixed(1), found.best.toFixed(1)];
      return `| ${[name, compressibility, ...cells].join(' | ')} |`;
    }),
  );
  return [
    '| septum | compressibility | true run, hL | by the fits | true best feed, g/hL | by the fits |',
    '| --- | --- | --- | --- | --- | --- |',
    ...rows,
  ].join('\n');
}
