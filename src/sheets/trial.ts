import { CAUTIONS } from '../cautions.js';
import { text } from './cells.js';
import { columnTitles, widthsOf } from './columns.js';
import { caution, gap, heading, type Line, layOut, note, picture } from './layout.js';
import { opening } from './opening.js';
import { trialCharts } from './trial/charts.js';
import { feedLines } from './trial/feedLines.js';
import { fitLines, runLines } from './trial/fitLines.js';
import { columns } from './trial/lines.js';
import { logLines } from './trial/logLines.js';
import { bestFeedLines } from './trial/planOfTrial.js';
import { repeatLines } from './trial/repeatLines.js';
import { answerLines, verdictLines } from './trial/verdictLines.js';

const whereToPaste: Line = {
  cells: (at) => [
    text(
      `Paste the logs into ${at('oldHours')} and the columns beside it; the calculations read all rows down to its end.`,
      'note',
    ),
  ],
};

/** Two run logs side by side, with a verdict, and feed trials to the body feed of least cost. */
export const trial = layOut(
  {
    key: 'trial',
    name: 'Trial log',
    summary:
      'Repeated runs of old powder and new with their verdict, two run logs side by side with fits, and the best body feed.',
    // What FITRUN says of a log's first point is longer than any figure.
    widths: [...widthsOf(columns, 20), 12, 12, ...Array.from({ length: 6 }, () => 11)],
    headerRows: 5,
    print: 'landscape',
    charts: trialCharts,
  },
  [
    ...opening('Trial log: two powders on one filter'),
    whereToPaste,
    columnTitles(columns),
    ...answerLines,
    ...repeatLines,
    ...runLines,
    { cells: () => [] },
    ...fitLines,
    ...verdictLines,
    ...feedLines,
    ...bestFeedLines,
    heading('What to watch'),
    note(
      'Change one thing at a time: with another beer or another flow in the second run the verdict is about that, too.',
    ),
    note(
      'One run of each kind tells noise of the gauge, not how runs differ from day to day: the verdict waits for repeated runs.',
    ),
    note('Permeabilities come as a set from these trials: do not mix them with figures of another origin.'),
    caution(CAUTIONS.pressure),
    caution(CAUTIONS.dust),
    gap,
    ...picture('logs.picture'),
    heading('The logs'),
    ...logLines,
  ],
);
