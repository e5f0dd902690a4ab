/** What FITCAKE and FITCAKES both say of a run, in words and units. */
export const squeezedFields = {
  start: { label: 'Start pressure drop', unit: 'bar' },
  resistance: { label: 'Resistance at 1 bar', unit: 'm/kg' },
  correlation: { label: 'Correlation of both errors', unit: '' },
  rise: { label: 'Rise', unit: 'bar/h' },
  from: { label: 'Rise read from', unit: 'h' },
  until: { label: 'Rise read until', unit: 'h' },
  remark: { label: 'Remark', text: true },
} as const;
