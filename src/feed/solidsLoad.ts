import { calculation } from '../core/calculation.js';
import { beerSolids } from '../quantities.js';

export const solidsLoad = calculation({
  id: 'SOLIDSLOAD',
  summary: 'Dry solids that the beer itself brings to the filter.',
  question: 'The cell count is known: how much solids does the beer bring to the cake?',
  inputs: {
    cells: {
      kind: 'number',
      label: 'Cells',
      unit: 'million/mL',
      limit: [0, 1000],
      usual: [0, 10],
      help: 'Yeast cells in the beer at the filter inlet.',
      source:
        'Usual range: some 10 million per mL come to a primary filter (filtrace.com, Shelf life of beer in terms of filtration). Above 2 million a filterability test no longer goes straight with the filter (K. J. Siebert and others, MBAA Technical Quarterly 21 (1984) 112, abstract tq84ab04).',
    },
    cellMass: {
      kind: 'number',
      label: 'Cell dry mass',
      unit: 'pg',
      limit: [1, 500],
      usual: [30, 125],
      preset: 30,
      help: 'Dry mass of one cell; well-fed brewing yeast is heavier than the preset.',
      source:
        'Preset and lower end: compressed yeast of 30 % dry matter has some 10 billion cells in a cm³, 30 pg each (buffalobrewingstl.com, yeast). Dried brewing yeasts have 8–18 billion cells in a gram, 56–125 pg each (S. Van den Berg and A. Van Landschoot, Cerevisia 28 (2003) 25, table 1, as quoted by brewers’ pages).',
    },
    other: {
      ...beerSolids,
      label: 'Other solids',
      usual: [0, 50],
      preset: 0,
      help: 'Dry haze, trub and gel that each hL brings, yeast apart.',
      source: 'Usual range: common practice, no source.',
    },
  },
  output: { kind: 'number', label: 'Beer solids', unit: 'g/hL' },
  method: 'cells × cell dry mass + other solids; 1 million cells per mL at 30 pg are 3 g/hL',
  sources: ['Balance of mass.'],
  example: { given: { cells: 2, other: 5 }, result: 11 },
  compute: ({ cells, cellMass, other }) => cells * cellMass + other,
});
