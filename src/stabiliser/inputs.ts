import { dose } from '../quantities.js';
import { FACTOR_SOURCE, KINDS } from './factors.js';

const kind = {
  kind: 'choice',
  of: KINDS,
  unfit: { pvpp: 'it removes polyphenol, not protein, so no factor leads from or to it.' },
} as const;

/** What both swap functions ask for. */
export const swapInputs = {
  dose: { ...dose, help: 'Present dose as bought; away from 65, 5 or 1 % moisture, correct it by SAMESOLIDS first.' },
  fromKind: { ...kind, label: 'From kind', help: 'The present stabiliser.' },
  toKind: {
    ...kind,
    label: 'To kind',
    help: 'The stabiliser to change to; adsorptive is a filter aid that also takes up haze protein.',
  },
} as const;

export const position = {
  kind: 'number',
  label: 'Position',
  unit: 'fraction',
  limit: [0, 1],
  preset: 0.5,
  help: 'Where in the factor range: 0 is its low end (as is a blank cell), 1 its high end.',
  source: FACTOR_SOURCE,
} as const;
