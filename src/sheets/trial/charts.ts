import { fitFeed } from '../../cake/fitFeed.js';
import { fitRun } from '../../cake/fitRun.js';
import { feedCurve } from '../../plan/feedCurve.js';
import { bodyFeed } from '../../quantities.js';
import { axisTitleOf, titleWithUnit } from '../fields.js';
import type { At } from '../layout.js';
import { withoutHeader } from '../place.js';
import type { SheetChart } from '../sheet.js';
import { SIDES } from './fitted.js';
import { columns } from './lines.js';

const { volumes, bars } = fitRun.inputs;
const { rises } = fitFeed.inputs;
const FEED = { title: titleWithUnit('Body feed', bodyFeed.unit) };

const logs = (at: At): SheetChart => ({
  title: 'Both logs and their fits',
  kind: 'points',
  across: { title: titleWithUnit('Volume', volumes.unit) },
  upwards: { title: titleWithUnit('Pressure drop', bars.unit) },
  series: SIDES.flatMap((side, run) => [
    {
      name: `${columns.figures[run]}`,
      across: at(`${side}Volumes`),
      upwards: at(`${side}Bars`),
    },
    {
      name: `Fit, ${columns.figures[run]?.toLowerCase()}`,
      kind: 'lines' as const,
      across: at(`ends.volume.${run}`),
      upwards: at(`ends.bar.${run}`),
    },
  ]),
  place: at('logs.picture'),
});

const trials = (at: At): SheetChart => ({
  title: 'Feed trials without stabiliser',
  kind: 'points',
  across: FEED,
  upwards: { title: titleWithUnit('Pressure rise', rises.unit) },
  series: [
    { name: 'Feed trials', across: withoutHeader(at('trials.feed')), upwards: withoutHeader(at('trials.rise')) },
  ],
  place: at('trials.picture'),
});

const costs = (at: At): SheetChart => ({
  title: 'Cost over the body feed, and the feed of least cost',
  kind: 'lines',
  across: FEED,
  upwards: axisTitleOf(feedCurve, 'cost'),
  series: SIDES.flatMap((side, run) => [
    {
      name: `${columns.figures[run]}`,
      across: withoutHeader(at('feedCurve.bodyFeed')),
      upwards: withoutHeader(at(side === 'old' ? 'feedCurve.cost' : 'newFeedCost')),
    },
    {
      name: `Least cost, ${columns.figures[run]?.toLowerCase()}`,
      kind: 'points' as const,
      across: at(`best.bodyFeed.${run}`),
      upwards: at(`best.cost.${run}`),
    },
  ]),
  place: at('best.picture'),
});

export const trialCharts = (at: At): readonly SheetChart[] => [logs(at), trials(at), costs(at)];
