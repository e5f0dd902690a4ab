import { isNoAnswer } from '../../../../src/core/evaluate.js';
import type { NoAnswer } from '../../../../src/core/output.js';
import { isRefused } from '../../../../src/core/read.js';
import { fromSI } from '../../../../src/core/units.js';
import { bestFeed } from '../../../../src/plan/bestFeed.js';
import { costOf } from '../../../../src/plan/cost.js';
import { leastCost, runsOf } from '../../../../src/plan/feed.js';
import { feedCurve } from '../../../../src/plan/feedCurve.js';
import type { CostPlan } from '../../../../src/plan/input.js';
import type { Mark, Picture } from '../picture.js';
import type { Speech } from '../speech.js';
import { axisOf, figureOf } from './figure.js';

const SMOOTH = 81;
const TABLE = 21;

const { bodyFeed, volume, rise, cost } = feedCurve.output.fields;

interface Spanned {
  readonly labels: { readonly values: CostPlan };
  readonly least: number;
  readonly most: number;
}

function rowsOf({ labels, least, most }: Spanned, points: number): readonly (readonly number[])[] {
  const rows = feedCurve.compute({ labels, least, most, points });
  if (isNoAnswer(rows) || isRefused(rows)) return [];
  return rows.map((row) => [
    fromSI(row.bodyFeed as number, bodyFeed.unit),
    fromSI(row.volume as number, volume.unit),
    fromSI(row.rise as number, rise.unit),
    fromSI(row.cost as number, cost.unit),
  ]);
}

/** Cost, rise and run over a span of body feeds, with the feed of least cost and today's. */
function feedPicture(given: Spanned, { words, amount }: Speech): Picture | NoAnswer {
  const { values } = given.labels;
  const runs = runsOf(values);
  if (isNoAnswer(runs)) return runs;
  const best = leastCost(values, runs, { from: given.least, to: given.most });
  const within = values.bodyFeed >= given.least && values.bodyFeed <= given.most;
  const smooth = rowsOf(given, SMOOTH);
  const curve = (column: number): Mark => ({
    kind: 'curve',
    points: smooth.map((row) => ({ x: row[0] as number, y: row[column] as number })),
  });
  const upright = (si: number, text: string, plain = false): Mark => ({
    kind: 'upright',
    at: fromSI(si, bodyFeed.unit),
    text,
    end: 'head',
    ...(plain ? { plain } : {}),
  });
  const bestFeedText = amount(best.run.bodyFeed, bodyFeed.unit);
  const today = amount(values.bodyFeed, bodyFeed.unit);
  const feeds = (named: boolean): readonly Mark[] => [
    upright(best.run.bodyFeed, named ? words.feed.best(bestFeedText) : ''),
    ...(within ? [upright(values.bodyFeed, named ? words.feed.now(today) : '', true)] : []),
  ];
  const spot: Mark = {
    kind: 'spot',
    at: { x: fromSI(best.run.bodyFeed, bodyFeed.unit), y: fromSI(best.cost, cost.unit) },
  };
  const todayCost = amount(costOf(values, runs(values.bodyFeed)), cost.unit);
  return {
    title: words.feed.title,
    summary: [
      words.feed.summary(bestFeedText, amount(best.cost, cost.unit), amount(best.run.volume, volume.unit)),
      words.feed.today(today, todayCost),
      ...(best.run.bodyFeed === given.least ? [words.feed.atLeast] : []),
      ...(best.run.bodyFeed === given.most ? [words.feed.atMost] : []),
    ].join(' '),
    x: axisOf(bodyFeed),
    panels: [
      { y: axisOf(cost), height: 1, marks: [...feeds(true), curve(3), spot] },
      { y: { ...axisOf(rise), fromZero: true }, height: 0.6, marks: [...feeds(false), curve(2)] },
      { y: { ...axisOf(volume), fromZero: true }, height: 0.6, marks: [...feeds(false), curve(1)] },
    ],
    notes: [{ text: words.feed.note }],
    table: { columns: [bodyFeed, volume, rise, cost], rows: rowsOf(given, TABLE) },
  };
}

export const feedFigures = [
  figureOf(feedCurve, (si, _, speech) => feedPicture(si, speech)),
  figureOf(bestFeed, (si, _, speech) => feedPicture(si, speech)),
] as const;
