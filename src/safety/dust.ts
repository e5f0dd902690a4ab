const AIR = { kind: 'series', least: 1, unit: 'mg/m³' } as const;

/** Dust or one of its parts in the air that people breathe. */
export const concentrations = {
  ...AIR,
  label: 'Concentrations',
  limit: [0, 100_000],
  help: 'In breathing air, each as measured.',
  source: 'The limits only keep out slips of the keyboard; the figure is your own.',
} as const;

export const exposureLimits = {
  ...AIR,
  label: 'Limits',
  limit: [1e-6, 100_000],
  help: 'Of each substance in turn, over 8 hours, as your country sets it.',
  source: 'The limits only keep out slips of the keyboard; the figure is that of your country’s rules.',
} as const;

/** For scale, never a preset: what two of the rule-makers say of respirable crystalline silica. */
export const SILICA_LIMITS =
  'Respirable crystalline silica over 8 hours: US 0.05 mg/m³, action level 0.025 mg/m³ (29 CFR 1910.1053); EU 0.1 mg/m³ (Directive 2004/37/EC, Annex III, as amended by (EU) 2017/2398).';
