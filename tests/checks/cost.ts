import type { PublishedCheck } from './check.js';

export const costChecks: readonly PublishedCheck[] = [
  {
    calculation: 'COSTPERHL',
    given: { dose: 175, price: 0.6 },
    expected: 0.105,
    tolerance: 1e-12,
    source:
      'by hand from published use (175 g/hL, ask-eu.de 7398) and price (600 EUR/t, German radio report on spent powder)',
    kind: 'derived',
  },
  {
    calculation: 'POWDERPERHL',
    given: { precoat: 40, feed: 90, run: 2104 },
    expected: 109.011_407,
    tolerance: 1e-8,
    source: 'by hand: 90 g/hL and 40 kg over 2104 hL',
    kind: 'derived',
  },
];
