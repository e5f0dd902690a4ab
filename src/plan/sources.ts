/** Where the plan's physics comes from, and how far it may be trusted. */
const RUN_SOURCES = [
  'Cake filtration at constant flow by Darcy’s law: W. L. McCabe, J. C. Smith and P. Harriott, Unit Operations of Chemical Engineering, 5th edition, 1993, chapter 30 (edition and chapter from memory); flow through a cylinder’s wall integrated over its radius.',
  'A model: steady flow, solids that all stay on the filter, one density and one resistance through the whole cake. Resistance or permeabilities must come from your own logs; a clean powder’s rated permeability promises a rise about twenty times too low.',
] as const;

export const MIX_SOURCES = [
  ...RUN_SOURCES,
  'Mixed cake: logarithms of permeability weighted by share of dry solids. A model, to be fitted to your own runs (FITFEED) and not to be stretched far beyond the doses that were run.',
] as const;
