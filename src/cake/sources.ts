/** What ties permeability and specific cake resistance together. */
export const DARCY_SOURCE =
  'Darcy’s law written for depth and for mass of cake: W. L. McCabe, J. C. Smith and P. Harriott, Unit Operations of Chemical Engineering, 5th edition, 1993, chapter 30 (edition and chapter from memory).';

/** How parts of a cake add up to its permeability. */
export const MIXTURE_SOURCE =
  'A model: logarithms of permeability weighted by share of dry solids. It is to be fitted to your own runs, and figures of different origin are not to be mixed.';

/** How a cake that grows outward on a candle resists. */
export const ROUND_SOURCE =
  'Round septum: Darcy’s law integrated over the radius of a cake of one density, as T. Ahmed, Reservoir Engineering Handbook, chapter 6, radial flow (chapter from memory).';

/** How a compressible cake's resistance grows. */
export const POWER_SOURCE =
  'Power law of compressible cakes, α = α₁ (Δp_cake / 1 bar)^n with Δp_cake over the whole cake: W. L. McCabe, J. C. Smith and P. Harriott, Unit Operations of Chemical Engineering, 5th edition, 1993, chapter 30 (edition and chapter from memory). It holds between the pressures of the log; towards no pressure at all a real cake keeps a finite resistance.';
