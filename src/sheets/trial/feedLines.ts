import { fitFeed } from '../../cake/fitFeed.js';
import { partPermeability } from '../../cake/partPermeability.js';
import { sameSolids } from '../../moisture/sameSolids.js';
import { call } from '../formula.js';
import { type At, gap, heading, type Line } from '../layout.js';
import { reportLines } from '../reports.js';
import { feedTable } from './feedTable.js';
import { columns, computed, withoutSecond } from './lines.js';

const READ = ['trialDryFeeds', 'trialRises', 'oldFlux', 'oldViscosity', 'oldBeerSolids', 'trialDensity'] as const;
const ON_CANDLE = ['trialRadius', 'trialDryPrecoat', 'trialHours'] as const;

/** None dosed, and so a permeability that is not read. */
const NO_STABILISER = ['0', '1'];

/** On a flat septum nobody needs to have noted the hours. */
const fitCall = (at: At): string => {
  const read = READ.map(at);
  const onCandle = call(fitFeed.id, [...read, ...NO_STABILISER, ...ON_CANDLE.map(at)]);
  return `IF(${at('trialRadius')}>0,${onCandle},${call(fitFeed.id, read)})`;
};

/** The other parts' shares and permeabilities stand in two rows each, as PARTPERMEABILITY takes them. */
const SIDES = ['old', 'new'] as const;
const names = (key: string) => SIDES.map((side) => `${side}${key}`);
const twoRows = (at: At, key: string) => `${at(`${key}Aid`)}:${at(`${key}Beer`).replace(/.*:/, '')}`;

const part = (at: At, side: string): string =>
  `=${call(partPermeability.id, [at(`${side}Mix`), at(`${side}DryStabiliser`), twoRows(at, `${side}Share`), twoRows(at, `${side}Fitted`)])}`;

export const feedLines: readonly Line[] = [
  ...feedTable,
  gap,
  heading('Permeabilities'),
  ...reportLines({ ...columns, figures: columns.figures.slice(0, 1) }, 'feed', fitFeed, (at) => [fitCall(at)]).map(
    withoutSecond,
  ),
  computed(
    names('ShareAid'),
    'Filter aid in the cake, dry',
    (at) => SIDES.map((side) => `=${call(sameSolids.id, [at(`${side}Feed`), at('trialAidMoisture'), '0'])}`),
    'g/hL',
    'body feed less its moisture',
  ),
  computed(
    names('ShareBeer'),
    'Beer solids in the cake, dry',
    (at) => SIDES.map((side) => `=${at(`${side}BeerSolids`)}`),
    'g/hL',
    'as given above',
  ),
  computed(
    names('DryStabiliser'),
    'Stabiliser in the cake, dry',
    (at) =>
      SIDES.map((side) => `=${call(sameSolids.id, [at(`${side}Stabiliser`), at(`${side}StabiliserMoisture`), '0'])}`),
    'g/hL',
    'dose less its moisture',
  ),
  computed(
    names('FittedAid'),
    'Permeability of the filter aid',
    (at) => SIDES.map(() => `=${at('feed.aid.0')}`),
    'darcy',
    'fitted on the feed trials',
  ),
  computed(
    names('FittedBeer'),
    'Permeability of the beer solids',
    (at) => SIDES.map(() => `=${at('feed.beer.0')}`),
    'darcy',
    'fitted on the feed trials',
  ),
  computed(
    names('Part'),
    'Permeability of the stabiliser',
    (at) => SIDES.map((side) => part(at, side)),
    'darcy',
    `${partPermeability.method}; it takes all that the fits leave over, so its own error is larger than theirs`,
  ),
  gap,
];
