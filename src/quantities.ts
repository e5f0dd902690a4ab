import { quantity, SLIPS } from './quantity.js';

export * from './cakeQuantities.js';

export const mass = quantity({
  label: 'Mass',
  unit: 'kg',
  limit: [0, 1e7],
  help: 'Powder as it stands: with its water.',
  source: SLIPS,
});

export const moisture = quantity({
  label: 'Moisture',
  unit: 'fraction',
  limit: [0, 0.999],
  usual: [0, 0.7],
  help: 'Water in the powder, share of the mass as it stands (wet basis). Write 65 % or 0.65.',
  source:
    'Usual range: dry filter aids near 0, xerogel about 5 %, hydrogel 60–70 % (dictionary of beer, beerandbrewing.com, entry on silica gel).',
});

export const price = quantity({
  label: 'Price',
  unit: 'money/kg',
  limit: [0, 1e7],
  help: 'Per kg as bought, in the currency of your sheet.',
  source: SLIPS,
});

export const dose = quantity({
  label: 'Dose',
  unit: 'g/hL',
  limit: [0, 10_000],
  usual: [20, 150],
  help: 'Powder as bought for each hL of beer.',
  source:
    'Usual range: silica hydrogel was tried at 200–1500 mg/L and is normal at 320–600 mg/L, 32–60 g/hL, for American lager (J. S. Hough, MBAA Technical Quarterly 13 (1976) 34, abstract tq76ab36); a drier gel takes 30–50 % less (tq90ab15).',
});

export const bodyFeed = quantity({
  ...dose,
  label: 'Body feed',
  usual: [50, 200],
  help: 'Filter aid dosed into the beer during the run, for each hL of beer.',
  source: 'Usual range from memory of brewing textbooks: 60–120 g/hL, extremes 50–200 g/hL.',
});

export const flow = quantity({
  label: 'Flow',
  unit: 'hL/h',
  limit: [0.001, 10_000],
  usual: [20, 1000],
  help: 'Beer through the filter.',
  source: 'Usual range: common practice, no source.',
});

export const tank = quantity({
  label: 'Tank',
  unit: 'hL',
  limit: [0, 10_000],
  help: 'Beer volume that the buffer tank holds while beer runs through it.',
  source: SLIPS,
});

export const contact = quantity({
  label: 'Contact time',
  unit: 'min',
  limit: [0, 10_080],
  usual: [0, 30],
  help: 'How long the stabiliser stays in the beer before the filter takes it out.',
  source:
    'Usual range: hydrogel from seconds in line (MBAA Technical Quarterly 1976, tq76ab36) to about 5 min (1979, tq79ab06); longer is common practice, no source.',
});

export const slurryStrength = quantity({
  label: 'Slurry strength',
  unit: 'g/L',
  limit: [0.1, 1000],
  usual: [100, 150],
  help: 'Powder in each litre of finished slurry, in the dosing tank.',
  source: 'Usual range from memory of brewing textbooks: 100–150 g/L in the dosing tank.',
});

export const pump = quantity({
  label: 'Pump rate',
  unit: 'L/h',
  limit: [0.001, 1e6],
  help: 'Slurry that the dosing pump delivers.',
  source: SLIPS,
});

export const volume = quantity({
  label: 'Run volume',
  unit: 'hL',
  limit: [0.001, 1e6],
  usual: [100, 20_000],
  help: 'Beer filtered in one run.',
  source: 'Usual range: common practice, no source.',
});

export const area = quantity({
  label: 'Filter area',
  unit: 'm²',
  limit: [0.0001, 10_000],
  usual: [5, 200],
  help: 'Area of all septa together.',
  source: 'Usual range: common practice, no source.',
});

export const powderDensity = quantity({
  label: 'Powder density',
  unit: 'kg/m³',
  limit: [500, 10_000],
  usual: [1100, 2400],
  help: 'Of the grains themselves, without the air between them: not the bulk density.',
  source: 'Usual range from memory: moist gels from 1100, dry silica powders up to 2400 kg/m³.',
});

export const haze = quantity({
  label: 'Haze',
  unit: 'EBC',
  limit: [0, 1000],
  usual: [0.2, 8],
  help: 'By a haze meter, at the angle and temperature of your own method.',
  source:
    'Usual range: grades of haze in beer from brilliant (up to 0.5) to hazy (up to 8 EBC), National Physical Laboratory (UK), Haze measurements in beer.',
});

export const temperature = quantity({
  label: 'Temperature',
  unit: '°C',
  limit: [-5, 80],
  usual: [-2, 30],
  help: 'Of the beer.',
  source:
    'Limits: beer freezes at about −2 to −5 °C and is pasteurised below 80 °C. Usual range: common practice, no source.',
});

export const precoatLoad = quantity({
  label: 'Precoat load',
  unit: 'g/m²',
  limit: [0, 10_000],
  usual: [700, 1000],
  help: 'Powder on each m² of septum, all coats together.',
  source:
    'Usual range from memory of brewing textbooks, 700–1000 g/m²; drinking-water practice is 0.10–0.15 lb/ft², 488–732 g/m².',
});
