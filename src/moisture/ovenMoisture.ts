import { calculation } from '../core/calculation.js';

const weighed = {
  kind: 'number',
  unit: 'g',
  limit: [0.000_001, 1e6],
  source: 'The limits only keep out slips of the keyboard; the figure is your own.',
} as const;

export const ovenMoisture = calculation({
  id: 'OVENMOISTURE',
  summary: 'Moisture of a powder from its loss on drying.',
  question: 'How moist is this sample?',
  inputs: {
    wetSample: { ...weighed, label: 'Wet sample', help: 'Sample before drying, with the dish if the tare is given.' },
    drySample: { ...weighed, label: 'Dry sample', help: 'The same after drying to constant mass.' },
    tare: { ...weighed, label: 'Tare', limit: [0, 1e6], preset: 0, help: 'The empty dish; 0 if it was tared away.' },
  },
  output: { kind: 'number', label: 'Moisture', unit: 'fraction' },
  method: '(wet sample − dry sample) / (wet sample − tare)',
  sources: ['Loss on drying, the usual laboratory definition of moisture on the wet basis.'],
  example: { given: { wetSample: 30, drySample: 17, tare: 10 }, result: 0.65 },
  refuse: ({ wetSample, drySample, tare }) => {
    if (wetSample <= tare) return 'Wet sample must weigh more than Tare.';
    if (drySample < tare) return 'Dry sample must weigh at least as much as Tare.';
    return drySample > wetSample ? 'Dry sample must not weigh more than Wet sample.' : undefined;
  },
  compute: ({ wetSample, drySample, tare }) => (wetSample - drySample) / (wetSample - tare),
});
