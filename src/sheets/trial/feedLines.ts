import { fitClarity } from '../../cake/fitClarity.js';
import { fitFeed } from '../../cake/fitFeed.js';
import { partPermeability } from '../../cake/partPermeability.js';
import { sameSolids } from '../../moisture/sameSolids.js';
import { PLAN } from '../../plan/table.js';
import { blockLines, countOf, judgementOf, placesOf } from '../block.js';
import { text } from '../cells.js';
import { call, figuresIn } from '../formula.js';
import { type At, gap, heading, type Line, note, picture } from '../layout.js';
import { reportLines } from '../reports.js';
import { feedTrialList } from './feedTrialList.js';
import { both, SIDES } from './fitted.js';
import { columns, computed, input, row, withoutSecond } from './lines.js';
import { HAZE_LIMIT } from './trialCase.js';

const READ = ['oldFlux', 'oldViscosity', 'oldBeerSolids', 'trialDensity'] as const;
const ON_CANDLE = ['trialRadius', 'trialDryPrecoat'] as const;

/** Columns of the trials, of the rows that have a figure in all of them. */
const trialsOf = (at: At, ...keys: readonly string[]): readonly string[] => {
  const ranges = keys.map(placesOf(feedTrialList, at));
  return ranges.map((range) =>
    figuresIn(
      range,
      ranges.filter((other) => other !== range),
    ),
  );
};

/** None dosed, and so a permeability that is not read. */
const NO_STABILISER = ['0', '1'];

/** On a flat septum nobody needs to have noted the hours. */
const fitCall = (at: At): string => {
  const read = [...trialsOf(at, 'dry', 'rise'), ...READ.map(at)];
  const [feeds, rises, hours] = trialsOf(at, 'dry', 'rise', 'hours') as [string, string, string];
  const onCandle = call(fitFeed.id, [feeds, rises, ...READ.map(at), ...NO_STABILISER, ...ON_CANDLE.map(at), hours]);
  return `IF(${at('trialRadius')}>0,${onCandle},${call(fitFeed.id, read)})`;
};

/** The other parts' shares and permeabilities stand in two rows each, as PARTPERMEABILITY takes them. */
const twoRows = (at: At, key: string) => `${at(`${key}Aid`)}:${at(`${key}Beer`).replace(/.*:/, '')}`;

const part = (at: At, side: string): string =>
  `=${call(partPermeability.id, [at(`${side}Mix`), at(`${side}DryStabiliser`), twoRows(at, `${side}Share`), twoRows(at, `${side}Fitted`)])}`;

const single = { ...columns, figures: columns.figures.slice(0, 1) };

/** How many trials are read, and the first that cannot be. */
const trialsLine: Line = {
  marks: { feedTrials: { column: 1 }, 'trials.judged': { column: columns.judgement } },
  judged: [{ cells: { column: 1 }, by: { column: columns.judgement } }],
  cells: (at) =>
    row(
      'Feed trials that are read',
      [{ formula: `=${countOf(feedTrialList, at)}`, format: '0', style: 'result' }],
      '',
      [{ formula: `=${judgementOf(feedTrialList, at)}`, style: 'note' }],
      text('a trial that is refused is named here and beside its row', 'note'),
    ),
};

/** Trials with a haze that tell a least feed. */
const HAZES = fitClarity.inputs.hazes.least;

const clarityLines: readonly Line[] = [
  heading('Clarity'),
  input('hazeLimit', fitClarity, 'limit', HAZE_LIMIT),
  ...reportLines(single, 'clarity', fitClarity, (at) => [
    call(fitClarity.id, [...trialsOf(at, 'feed', 'haze'), at('hazeLimit')]),
  ]).map(withoutSecond),
  computed(
    'trialLeastFeed',
    PLAN.leastFeed.label,
    (at) =>
      `=IF(COUNT(${placesOf(feedTrialList, at)('haze')})<${HAZES},0,IF(ISNUMBER(${at('clarity.safe.0')}),${at('clarity.safe.0')},NA()))`,
    PLAN.leastFeed.unit,
    `on the safe side; 0, and so none, while fewer than ${HAZES} trials have a haze`,
  ),
  gap,
];

export const feedLines: readonly Line[] = [
  heading('Feed trials without stabiliser'),
  note(
    `One row for each run at its own body feed; same beer, flow and filter as the run with the old powder. A rise is the mean from the first beer to the hour named, which counts on a candle. Room for ${feedTrialList.room}; rows may be put in and taken out anywhere.`,
  ),
  ...blockLines(feedTrialList),
  gap,
  heading('Permeabilities'),
  trialsLine,
  ...reportLines(single, 'feed', fitFeed, (at) => [fitCall(at)]).map(withoutSecond),
  computed(
    both('ShareAid'),
    'Filter aid in the cake, dry',
    (at) => SIDES.map((side) => `=${call(sameSolids.id, [at(`${side}Feed`), at('trialAidMoisture'), '0'])}`),
    'g/hL',
    'body feed less its moisture',
  ),
  computed(
    both('ShareBeer'),
    'Beer solids in the cake, dry',
    (at) => SIDES.map((side) => `=${at(`${side}BeerSolids`)}`),
    'g/hL',
    'as given above',
  ),
  computed(
    both('DryStabiliser'),
    'Stabiliser in the cake, dry',
    (at) =>
      SIDES.map((side) => `=${call(sameSolids.id, [at(`${side}Stabiliser`), at(`${side}StabiliserMoisture`), '0'])}`),
    'g/hL',
    'dose less its moisture',
  ),
  computed(
    both('FittedAid'),
    'Permeability of the filter aid',
    (at) => SIDES.map(() => `=${at('feed.aid.0')}`),
    'darcy',
    'fitted on the feed trials',
  ),
  computed(
    both('FittedBeer'),
    'Permeability of the beer solids',
    (at) => SIDES.map(() => `=${at('feed.beer.0')}`),
    'darcy',
    'fitted on the feed trials',
  ),
  computed(
    both('Part'),
    'Permeability of the stabiliser',
    (at) => SIDES.map((side) => part(at, side)),
    'darcy',
    `${partPermeability.method}; it takes all that the fits leave over, so its own error is larger than theirs`,
  ),
  ...picture('trials.picture'),
  ...clarityLines,
];
