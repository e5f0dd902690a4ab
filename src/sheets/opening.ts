import { text } from './cells.js';
import { type At, JUDGEMENTS, type Line, note, title } from './layout.js';
import { HOW_TO_READ, INVENTED_SCENARIO } from './scenario.js';
import { EXAMPLES } from './verdict.js';

/** How many inputs nobody has touched yet: those judged one by one, and those of the lists. */
const stillExamples =
  (lists: readonly string[]) =>
  (at: At): string =>
    [`COUNTIF(${at(JUDGEMENTS)},"*${EXAMPLES}")`, ...lists.map((name) => `SUM(${at(`${name}.examples`)})`)].join('+');

/** How a sheet begins: what it is, whether its figures are the example’s, and how to read it. */
export const opening = (words: string): readonly Line[] => [
  title(words),
  {
    cells: (at) => [
      {
        formula: `=IF(${at('examples.count')}=0,"No input is the example’s.",${at('examples.count')}&" inputs are still the example’s. ${INVENTED_SCENARIO}")`,
        style: 'note',
      },
    ],
  },
  note(HOW_TO_READ),
];

/** Counted in the answer. */
export const examplesLine = (lists: readonly string[] = []): Line => ({
  marks: { 'examples.count': { column: 1 } },
  cells: (at) => [
    text('Inputs that are still the example’s', 'label'),
    { formula: `=${stillExamples(lists)(at)}`, format: '0', style: 'result' },
  ],
});
