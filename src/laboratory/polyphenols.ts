import { calculation } from '../core/calculation.js';

/** mg/L for an absorbance of 1 in a cell of 1 cm, as the method prescribes it. */
const FACTOR = 820;

export const polyphenols = calculation({
  id: 'POLYPHENOLS',
  summary: 'Total polyphenols of a beer from the absorbance at 600 nm.',
  question: 'How much polyphenol does this absorbance mean?',
  inputs: {
    absorbance: {
      kind: 'number',
      label: 'Absorbance',
      unit: '',
      limit: [0, 5],
      usual: [0.1, 0.5],
      help: 'At 600 nm in a cell of 1 cm, blank taken off.',
      source: 'Usual range: beers of 100–300 mg/L (J. Inst. Brew. 111 (2005) 118), and some beyond.',
    },
    dilution: {
      kind: 'number',
      label: 'Dilution',
      unit: '',
      limit: [1, 1000],
      usual: [1, 2],
      preset: 1,
      help: '1 for a sample of 10 mL, 2 for 5 mL.',
      source: 'Usual range from memory of the method.',
    },
  },
  output: { kind: 'number', label: 'Polyphenols', unit: 'mg/L' },
  method: '820 mg/L × absorbance × dilution; ferric ammonium citrate in alkaline CMC/EDTA solution',
  sources: [
    'ASBC Methods of Analysis, Beer-35, total polyphenol; principle as in the MEBAK collection (mebak.org, B-590-41-111).',
  ],
  example: { given: { absorbance: 0.25 }, result: 205 },
  // 1 mg/L is 0.001 in SI.
  compute: ({ absorbance, dilution }) => (FACTOR * absorbance * dilution) / 1000,
});
