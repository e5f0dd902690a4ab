import { CAUTIONS } from '../cautions.js';
import { blockLines } from './block.js';
import { text } from './cells.js';
import { columnTitles, widthsOf } from './columns.js';
import { caution, gap, heading, type Line, layOut, marked, markedFirst, note, picture } from './layout.js';
import { opening } from './opening.js';
import { SOURCE_TITLE } from './provenance.js';
import { trialCharts } from './trial/charts.js';
import { feedLines } from './trial/feedLines.js';
import { fitLines, runLines } from './trial/fitLines.js';
import { columns } from './trial/lines.js';
import { logList, readingPlaces, upperPlaces } from './trial/logList.js';
import { bestFeedLines } from './trial/planOfTrial.js';
import { repeatLines } from './trial/repeatLines.js';
import { repeatList } from './trial/repeatList.js';
import { answerLines, verdictLines } from './trial/verdictLines.js';

const THE_LOGS = 'The logs';

/** The column in which the list of repeated runs has its sources. */
const SOURCE_OF_RUNS = repeatList.given.length + 1;

const whereToPaste: Line = {
  cells: (at) => [
    text(
      `Paste the logs from ${at('log.first')} on, below “${THE_LOGS}”: room for ${logList.room} readings of each run.`,
      'note',
    ),
  ],
};

const [logTitles, logUnits, ...logRows] = blockLines(logList) as [Line, Line, ...Line[]];

/** Two run logs side by side, with a verdict, and feed trials to the body feed of least cost. */
export const trial = layOut(
  {
    key: 'trial',
    name: 'Trial log',
    summary:
      'Repeated runs of old powder and new with their verdict, two run logs side by side with fits, and the best body feed.',
    // What FITRUN says of a log's first point is longer than any figure.
    widths: [...widthsOf(columns, 20), 12, 12, ...Array.from({ length: 6 }, () => 11)].map((width, column) =>
      column === SOURCE_OF_RUNS ? SOURCE_TITLE.length : width,
    ),
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
    heading(THE_LOGS),
    note('These two are calculated by the functions’ own physics, with noise on every reading.'),
    note(
      'One reading of each run in a row, in any order of the runs; blank rows are passed over. Rows may be put in and taken out anywhere; they take a reading of both runs with them.',
    ),
    logTitles,
    marked(logUnits, upperPlaces),
    ...markedFirst(logRows, readingPlaces),
  ],
);
