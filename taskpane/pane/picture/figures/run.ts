import { CAUTIONS } from '../../../../src/cautions.js';
import { isNoAnswer } from '../../../../src/core/evaluate.js';
import type { NoAnswer } from '../../../../src/core/output.js';
import { isRefused } from '../../../../src/core/read.js';
import { fromSI } from '../../../../src/core/units.js';
import type { RunPlan } from '../../../../src/plan/input.js';
import { endsOf, pressureAfter, runOf, timeFor } from '../../../../src/plan/run.js';
import { runCurve } from '../../../../src/plan/runCurve.js';
import { runLength } from '../../../../src/plan/runLength.js';
import { runReport } from '../../../../src/plan/runReport.js';
import type { Picture } from '../picture.js';
import type { Speech } from '../speech.js';
import { axisOf, figureOf } from './figure.js';

/** Enough for a smooth curve, and for a table that can be read. */
const SMOOTH = 61;
const TABLE = 13;

const { volume, time, pressure, load } = runCurve.output.fields;

function rowsOf(plan: RunPlan, points: number): readonly (readonly number[])[] {
  const rows = runCurve.compute({ labels: { values: plan }, points });
  if (isNoAnswer(rows) || isRefused(rows)) return [];
  return rows.map((row) => [
    fromSI(row.volume as number, volume.unit),
    fromSI(row.time as number, time.unit),
    fromSI(row.pressure as number, pressure.unit),
    fromSI(row.load as number, load.unit),
  ]);
}

/** Pressure drop and cake load over a run, with the limits and what ends it. */
export function runPicture(plan: RunPlan, { words, amount }: Speech): Picture | NoAnswer {
  const run = runOf(plan);
  if (isNoAnswer(run)) return run;
  const smooth = rowsOf(plan, SMOOTH);
  const curve = (column: number) => smooth.map((row) => ({ x: row[0] as number, y: row[column] as number }));
  const ends = endsOf(run);
  const names = ends.map((one) => words.run.end[one]);
  const end = { kind: 'upright', at: fromSI(run.volume, volume.unit), end: 'foot' } as const;
  const only = ends.length === 1 ? ends[0] : undefined;
  return {
    title: words.run.title,
    summary: [
      words.run.summary(
        amount(plan.startPressure, pressure.unit),
        amount(pressureAfter(run, run.volume), pressure.unit),
        amount(run.volume, volume.unit),
        amount(timeFor(run, run.volume), time.unit),
      ),
      only ? words.run.ends[only] : words.run.ends.several(names.join(', ')),
    ].join(' '),
    x: axisOf(volume),
    panels: [
      {
        y: { ...axisOf(pressure), fromZero: true },
        height: 1,
        marks: [
          {
            kind: 'level',
            at: fromSI(plan.pressureLimit, pressure.unit),
            text: words.run.limit(amount(plan.pressureLimit, pressure.unit)),
          },
          { ...end, text: words.run.endsHere(names.join(', ')) },
          { kind: 'curve', points: curve(2) },
        ],
      },
      {
        y: { ...axisOf(load), fromZero: true },
        height: 0.6,
        marks: [
          {
            kind: 'level',
            at: fromSI(plan.cakeSpace, load.unit),
            text: words.run.space(amount(plan.cakeSpace, load.unit)),
          },
          { ...end, text: '' },
          { kind: 'curve', points: curve(3) },
        ],
      },
    ],
    notes: [
      { text: plan.cakeResistance === undefined ? words.run.permeabilities : words.run.resistance },
      { text: CAUTIONS.pressure, english: true },
    ],
    table: { columns: [volume, time, pressure, load], rows: rowsOf(plan, TABLE) },
  };
}

export const runFigures = [
  figureOf(runCurve, ({ labels }, _, speech) => runPicture(labels.values, speech)),
  figureOf(runLength, ({ labels }, _, speech) => runPicture(labels.values, speech)),
  figureOf(runReport, ({ labels }, _, speech) => runPicture(labels.values, speech)),
] as const;
