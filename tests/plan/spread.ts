import { byLabel, type Changed, columnsOf, rowsOf } from './columns.js';

/** SAVINGSPREAD as P10, P50, P90, mean, chance, its standard error and samples without a run. */
export function spread(
  plans: readonly [Changed, Changed, Changed, Changed],
  samples?: number,
  seed?: number,
  apart?: readonly string[],
) {
  const rows = rowsOf(
    'SAVINGSPREAD',
    ...columnsOf(...plans),
    samples ?? null,
    seed ?? null,
    apart?.map((label) => [label]),
  );
  const cell = (label: string) => byLabel(rows).get(label)?.[0] as number;
  return {
    p10: cell('Yearly saving, P10'),
    p50: cell('Yearly saving, P50'),
    p90: cell('Yearly saving, P90'),
    mean: cell('Yearly saving, mean'),
    chance: cell('Chance of saving'),
    error: cell('Chance of saving, standard error'),
    withoutRun: cell('Samples without a run'),
  };
}
