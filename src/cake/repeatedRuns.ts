/** The power to see a difference that trials are commonly planned for. */
export const SEEING = 0.8;
/** More runs of each powder than anyone makes. */
export const MOST_RUNS = 500;

export const TWO_GROUPS_SOURCE =
  'Two groups compared by Student’s t with pooled scatter, of logarithms, since runs differ by a share; sizes of trials: NIST/SEMATECH e-Handbook of Statistical Methods, sections 7.3.1 and 7.2.2.2 (section numbers from memory).';

/** A difference between logarithms as a share, and back. */
export const asShare = (logarithm: number): number => Math.expm1(logarithm);
export const asLogarithm = (share: number): number => Math.log1p(share);

export interface Group {
  readonly name: string;
  readonly figures: readonly number[];
}

/** Figures by the powder of their run, in the order in which powders first appear; case does not tell them apart. */
export function byPowder(powders: readonly string[], figures: Float64Array): readonly Group[] {
  const groups = new Map<string, { name: string; figures: number[] }>();
  for (const [run, name] of powders.entries()) {
    const key = name.toLowerCase();
    const group = groups.get(key) ?? { name, figures: [] };
    group.figures.push(figures[run] as number);
    groups.set(key, group);
  }
  return [...groups.values()];
}

/** Why names are not those of two powders. */
export function powdersRefusal(powders: readonly string[]): string | undefined {
  const blank = powders.indexOf('');
  if (blank >= 0) return `Powders, row ${blank + 1}, is blank: name the powder of each run.`;
  const names = new Set(powders.map((name) => name.toLowerCase()));
  return names.size === 2
    ? undefined
    : `Powders must name two powders, but ${names.size === 1 ? 'one was' : `${names.size} were`} named.`;
}
