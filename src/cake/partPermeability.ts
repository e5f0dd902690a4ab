import { calculation } from '../core/calculation.js';
import { fromSI } from '../core/units.js';
import { plainNumber, spanInWords } from '../core/wording.js';
import { permeability } from '../quantities.js';
import { logarithmicSums, ownShare, parts } from './mixture.js';
import { MIXTURE_SOURCE } from './sources.js';

const { shares, permeabilities } = parts;
const { unit, limit } = permeability;

export const partPermeability = calculation({
  id: 'PARTPERMEABILITY',
  summary: 'Permeability of one part of a mixed cake, from that of the mix and of the other parts.',
  question: 'How permeable are the beer solids, or a new stabiliser, on their own?',
  inputs: {
    mix: { ...permeability, label: 'Mix permeability', help: 'Of the whole cake, from a run log.' },
    ownShare: { ...ownShare, help: `Of the part that is looked for. ${ownShare.help}` },
    otherShares: { ...shares, label: 'Other shares' },
    otherPermeabilities: { ...permeabilities, label: 'Other permeabilities' },
  },
  output: { kind: 'number', label: 'Part permeability', unit: 'darcy' },
  method: 'exp((Σ of all shares × ln mix permeability − Σ other share × ln other permeability) / own share)',
  sources: [MIXTURE_SOURCE],
  example: {
    given: { mix: 0.1, ownShare: 1, otherShares: [3], otherPermeabilities: [1] },
    result: 0.0001,
  },
  compute: ({ mix, ownShare, otherShares, otherPermeabilities }) => {
    const { share, weighted } = logarithmicSums(otherShares, otherPermeabilities);
    const part = Math.exp(((ownShare + share) * Math.log(mix) - weighted) / ownShare);
    const shown = fromSI(part, unit);
    if (shown >= limit[0] && shown <= limit[1]) return part;
    return {
      none: `No permeability ${spanInWords(limit, unit)} gives this mix: the part would need ${plainNumber(Number(shown.toPrecision(3)))} ${unit}. Check shares and permeabilities; its share may be too small to tell.`,
    };
  },
});
