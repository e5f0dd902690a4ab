import { permeability } from '../quantities.js';

const share = {
  unit: 'as given',
  limit: [0, 1e9],
  source: 'The limits only keep out slips of the keyboard; the figure is your own.',
} as const;

const SHARE_HELP = 'Dry mass, dose or percent, in any one unit: only the proportions count.';

const { unit, limit, source } = permeability;

/** Parts of a cake as two columns side by side. */
export const parts = {
  shares: { ...share, kind: 'series', least: 1, label: 'Shares', help: SHARE_HELP },
  permeabilities: {
    kind: 'series',
    least: 1,
    label: 'Permeabilities',
    unit,
    limit,
    source,
    help: 'One for each share, from your own fits.',
  },
} as const;

/** The share of the part that is looked for: it has to be there. */
export const ownShare = { ...share, kind: 'number', label: 'Own share', limit: [1e-9, 1e9], help: SHARE_HELP } as const;

/** Sums over the parts: of the shares, and of share × logarithm of permeability. */
export function logarithmicSums(
  shares: Float64Array,
  permeabilities: Float64Array,
): { share: number; weighted: number } {
  let total = 0;
  let weighted = 0;
  for (let part = 0; part < shares.length; part++) {
    total += shares[part] as number;
    weighted += (shares[part] as number) * Math.log(permeabilities[part] as number);
  }
  return { share: total, weighted };
}
