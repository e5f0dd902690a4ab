/**
 * The spread of a saving by a second program: another generator (mulberry32), the triangular distribution by its
 * inverse, and the run of a rigid, flat cake written out in the units of the sheet. It shares nothing with the library.
 */
export interface Ends {
  readonly low: number;
  readonly high: number;
}

const generator = (seed: number) => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
};

const PER_DARCY = 9.869232667160128e-13;

export interface Swap {
  readonly feed: number;
  readonly dose: number;
  readonly moisture: number;
  readonly permeability: number;
  readonly price: number;
}

/** What both plans share: beer solids g/hL, their darcy, disposal per t, bar of start pressure. */
export interface Shared {
  readonly solids: number;
  readonly beerDarcy: number;
  readonly disposal: number;
  readonly start: number;
}

/** Money per hL of the invented plan with these figures, or undefined where it has no run. */
function costPerHl({ feed, dose, moisture, permeability, price }: Swap, shared: Shared): number | undefined {
  if (shared.start >= 4.5) return undefined;
  const aid = feed * 0.995;
  const gel = dose * (1 - moisture);
  const all = aid + gel + shared.solids;
  const logs = aid * Math.log(0.1) + gel * Math.log(permeability) + shared.solids * Math.log(shared.beerDarcy);
  const resistance = 1 / (Math.exp(logs / all) * PER_DARCY * 300);
  const flux = 250 / 36_000 / 50;
  const byPressure = ((((4.5 - shared.start) * 1e5) / (0.0028 * flux * resistance)) * 50 * 1000) / all;
  const bySpace = ((6500 - 796) * 50) / all;
  const run = Math.min(byPressure, bySpace);
  const cake = shared.disposal / 0.25 / 1e6;
  const perRun = 40 * 0.8 + 39_800 * cake + 15 * 3.5 + 50 + 180 + 126 + 240 + 60;
  return (feed * 0.8) / 1000 + (dose * price) / 1000 + all * cake + perRun / run;
}

export interface Ranges {
  readonly present: Readonly<Record<keyof Swap, Ends>>;
  readonly proposed: Readonly<Record<keyof Swap, Ends>>;
  readonly shared: Readonly<Record<keyof Shared, Ends>>;
}

const LOGARITHMIC = ['permeability', 'beerDarcy'];

/** Yearly savings, ascending, and how many samples had no run. */
export function independentSavings({ present, proposed, shared }: Ranges, samples: number, seed: number) {
  const even = generator(seed);
  const draw = <R extends Readonly<Record<string, Ends>>>(ranges: R) =>
    Object.fromEntries(
      Object.entries(ranges).map(([key, { low, high }]) => {
        const u = even();
        const t = u < 0.5 ? Math.sqrt(u / 2) : 1 - Math.sqrt((1 - u) / 2);
        return [key, LOGARITHMIC.includes(key) ? low * (high / low) ** t : low + (high - low) * t];
      }),
    ) as { [K in keyof R]: number };
  const savings: number[] = [];
  for (let sample = 0; sample < samples; sample++) {
    const both = draw(shared);
    const [today, then] = [costPerHl(draw(present), both), costPerHl(draw(proposed), both)];
    if (today !== undefined && then !== undefined) savings.push((today - then) * 500_000);
  }
  return { savings: savings.sort((one, other) => one - other), withoutRun: samples - savings.length };
}
