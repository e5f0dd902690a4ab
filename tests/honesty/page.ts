import { table } from '../../.config/scripts/table.js';
import { type Claim, type Tally, tallied } from './claim.js';
import { CLAIMS, judged } from './claims.js';

export const CASES = 2000;
/** Each claim has a seed of its own, so that one more moves no other. */
const seedOf = ({ id, made, noise }: Claim): number =>
  [...`${id} ${made} ${noise}`].reduce((sum, letter) => (Math.imul(sum, 31) + letter.charCodeAt(0)) | 0, 7);

export const tally = (claim: Claim, cases: number): readonly Tally[] => tallied(claim, cases, seedOf(claim));

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;

const HEADER = ['function', 'figure', 'made of', 'noise', 'claimed', 'held', 'comes to'];

const rowOf = (claim: Claim, one: Tally): string[] => [
  claim.id,
  one.figure,
  claim.made,
  claim.noise,
  percent(claim.claimed),
  one.held === undefined ? '' : percent(one.held),
  judged(claim, one),
];

/** How often what is stated held the truth, as a page. */
export function honestyPage(cases = CASES): string {
  const rows = CLAIMS.flatMap((claim) => tally(claim, cases).map((one) => rowOf(claim, one)));
  const count = (verdict: string) => rows.filter((row) => row.at(-1) === verdict).length;
  return `# How often what is stated holds

Made by \`npm run coverage\` from \`tests/honesty\`; do not edit by hand. Each line is ${cases.toLocaleString('en').replace(',', '\u202f')} made cases of a known truth, with
noise of a fixed seed: the figure's interval, its chance or the verdict either held the truth or did not. *white*: each reading errs
on its own. *autocorrelated*: each reading's error is 0.7 of the last one's, and new chance. *growing*: in proportion to the reading.
*wandering and gauge*: a reading each minute, whose error wanders over quarters of an hour, and as much again on each reading.

A claim of 95 % counts as held from 90 to 98 %; one of 90 % from 80 to 96 %. A verdict may be right more often, since it is silent where
it cannot tell. *cannot be known*: the report itself says so. *more than claimed*: the interval is wider than it need be.

**${rows.length} figures: ${count('held')} held, ${count('cannot be known')} of which the report says that it cannot know, ${count('more than claimed')} wider than they need be,
${count('NOT HELD')} not held.** 2000 cases tell a share of 95 % to one percent.

Six are wider, and stay so. Where scatter grows, the start of a log scatters least, and a few dozen readings tell so little of how it
grows that it is taken for a line that nowhere falls below 0.15 of its mean: the start's error is then too wide, and a smaller floor
would leave logs of even scatter short. Hazes may scatter alike or in proportion to themselves; up to nine doses cannot tell which, so
the haze without dose, the largest, has the wider of both in its error. Two groups of runs take a drift of the beer for scatter;
taking the runs in pairs instead would halve the freedom, and widen the interval of all trials without a drift.

${table(HEADER, rows)}
`;
}
