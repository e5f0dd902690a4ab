import { calculation } from '../core/calculation.js';
import type { Unit } from '../core/units.js';
import { plainNumber } from '../core/wording.js';
import { ERRORS_METHOD, ERRORS_SOURCE, errorFields, errorsRemark } from '../errors/errorFields.js';
import { area } from '../quantities.js';
import { densityRefusal, heldThrough, onSeptum, pressureLog, septumOf, volumeLog } from './fitInputs.js';
import { DARCY_SOURCE, POWER_SOURCE, ROUND_SOURCE } from './sources.js';
import { fitSqueezed, squeezedRemark } from './squeezed.js';
import { squeezedFields } from './squeezedFields.js';

const { start, resistance, correlation, rise, from, until, remark } = squeezedFields;
const { times, errors } = errorFields;
const EXPONENT = { label: 'Exponent of all', unit: '' } as const;

/** A table has a column of its own for a standard error. */
const errorOf = <const F extends { readonly label: string; readonly unit: Unit }>({ label, unit }: F) =>
  ({ label: `${label}, standard error`, unit }) as const;

/** Start and height of each run are free, so that fewer rows say nothing of the exponent. */
const LEAST_ROWS = 3;

/** Rows of each run, in the order in which the runs first appear. */
function rowsByRun(runs: Float64Array): readonly (readonly [run: number, rows: readonly number[]])[] {
  const found = new Map<number, number[]>();
  for (const [row, run] of runs.entries()) found.set(run, [...(found.get(run) ?? []), row]);
  return [...found];
}

const pick = (series: Float64Array, rows: readonly number[]): Float64Array =>
  Float64Array.from(rows, (row) => series[row] as number);

/** The first run in which a figure that one run holds to is not the same in all its rows, in words. */
function unsteady(runs: Float64Array, held: Readonly<Record<string, Float64Array>>): string | undefined {
  for (const [run, rows] of rowsByRun(runs)) {
    if (rows.length < LEAST_ROWS)
      return `Run ${plainNumber(run)} has ${rows.length} rows; a run needs at least ${LEAST_ROWS}.`;
    for (const [label, series] of Object.entries(held)) {
      const changed = rows.find((row) => series[row] !== series[rows[0] as number]);
      if (changed !== undefined)
        return `${label} must be the same in all rows of a run, but changes in run ${plainNumber(run)}, row ${changed + 1}.`;
    }
  }
  return undefined;
}

export const fitCakes = calculation({
  id: 'FITCAKES',
  summary: 'One compressibility for the cakes of several run logs, and each run’s resistance at 1 bar.',
  question: 'How compressible are the cakes of all my runs together?',
  inputs: {
    runs: {
      kind: 'series',
      least: LEAST_ROWS,
      label: 'Runs',
      unit: '',
      limit: [0, 1e9],
      help: 'Number of the run to which each row belongs: all logs stand below one another.',
      source: 'The limits only keep out slips of the keyboard; the figure is your own.',
    },
    volumes: { ...volumeLog, least: LEAST_ROWS },
    bars: { ...pressureLog, least: LEAST_ROWS },
    area,
    ...heldThrough(LEAST_ROWS),
    ...onSeptum,
  },
  output: {
    kind: 'table',
    fields: {
      run: { label: 'Run', unit: '' },
      start,
      startError: errorOf(start),
      resistance,
      resistanceError: errorOf(resistance),
      exponent: EXPONENT,
      exponentError: errorOf(EXPONENT),
      correlation,
      rise,
      from,
      until,
      remark,
      times,
      errors,
    },
  },
  method: `as FITCAKE, all logs at once: one exponent for all, to each run its own start pressure drop and resistance. A row for each run; its rise, the hours it was read over and the exponent are what FITFEED takes to give the permeabilities at 1 bar, and the exponent is the Compressibility of the plan. Correlation is that of the exponent with the run’s resistance (its logarithm). ${ERRORS_METHOD}`,
  sources: [DARCY_SOURCE, POWER_SOURCE, ROUND_SOURCE, ERRORS_SOURCE],
  cautions: ['pressure'],
  example: {
    given: {
      runs: [1, 1, 1, 1, 1, 2, 2, 2, 2, 2],
      volumes: [0, 500, 1000, 1500, 2000, 0, 500, 1000, 1500, 2000],
      bars: [0.6, 0.85, 1.6, 2.85, 4.6, 0.5, 0.7, 1.3, 2.3, 3.7],
      area: 50,
      flow: [250],
      viscosity: [2.8],
      solids: [135.55],
    },
    result: { rows: 2 },
  },
  refuse: ({ runs, flow, viscosity, solids, septumRadius, cakeDensity }) =>
    densityRefusal({ septumRadius, cakeDensity }) ??
    unsteady(runs, { Flow: flow, Viscosity: viscosity, 'Solids to the cake': solids }),
  compute: ({ runs, volumes, bars, area, flow, viscosity, solids, septumRadius, cakeDensity, precoatLoad }) => {
    const byRun = rowsByRun(runs);
    const logs = byRun.map(([, rows]) => ({
      volumes: pick(volumes, rows),
      bars: pick(bars, rows),
      area,
      flow: flow[rows[0] as number] as number,
      viscosity: viscosity[rows[0] as number] as number,
      solids: solids[rows[0] as number] as number,
      septum: septumOf({ septumRadius, cakeDensity }),
      precoatLoad,
    }));
    const fitted = fitSqueezed(logs);
    if (typeof fitted === 'number')
      return {
        none: `The pressure drop of run ${plainNumber(byRun[fitted]?.[0] ?? 0)} does not rise over its log, so it tells no cake resistance.`,
      };
    const said = squeezedRemark(fitted);
    return fitted.runs.map(({ start, resistance, reached: _, ...told }, index) => ({
      ...told,
      run: byRun[index]?.[0],
      start: start.value,
      startError: start.error,
      resistance: resistance.value,
      resistanceError: resistance.error,
      exponent: fitted.exponent.value,
      exponentError: fitted.exponent.error,
      remark: said,
      errors: errorsRemark(fitted.errors),
    }));
  },
});
