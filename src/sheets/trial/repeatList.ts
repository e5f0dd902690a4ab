import { compareRuns } from '../../cake/compareRuns.js';
import { fitFeed } from '../../cake/fitFeed.js';
import { declaredInput } from '../cells.js';
import type { Block } from '../list.js';
import { columns } from './lines.js';
import { REPEATED_RUNS } from './logs.js';

/** Runs after the two that were logged. */
export const repeatList: Block = {
  name: 'repeats',
  what: 'run',
  room: 24,
  given: [
    {
      key: 'powder',
      label: 'Powder',
      declared: {
        kind: 'choice',
        label: 'Powder',
        help: compareRuns.inputs.powders.help,
        of: columns.figures,
      },
    },
    { key: 'rise', label: 'Pressure rise', declared: declaredInput(fitFeed, 'rises'), digits: 4 },
  ],
  calculated: [],
  examples: REPEATED_RUNS.map(([powder, rise]) => ({ powder, rise })),
  told: [['powder', 'rise']],
};
