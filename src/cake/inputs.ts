/** Quantities of the cake that more than one of its calculations reads. */
export const flux = {
  kind: 'number',
  label: 'Flux',
  unit: 'hL/(m² h)',
  limit: [0.001, 1000],
  usual: [0.8, 8],
  help: 'Flow over the area of the septum.',
  source:
    'Usual range: sheets 0.8–2.0, frames 2.5–4, leaf filters and candles up to 8 hL/(m² h) (beer-brewing.com, chapter 15; J. Inst. Brew. 1966, 72, 23; the rest from memory).',
} as const;

export const compressibility = {
  kind: 'number',
  label: 'Compressibility',
  unit: '',
  limit: [0, 0.9],
  usual: [0, 0.5],
  preset: 0,
  help: 'Exponent by which the resistance grows with the pressure drop over the cake (FITCAKE, FITCOMPRESSION); 0 for a rigid cake.',
  source: 'Limits: beyond 0.9 a run at constant flow has no steady growth. Usual range: common practice, no source.',
} as const;
