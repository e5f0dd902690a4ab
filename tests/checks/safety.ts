import type { PublishedCheck } from './check.js';

export const safetyChecks: readonly PublishedCheck[] = [
  {
    calculation: 'DUSTAVERAGE',
    given: { concentrations: [150, 75, 50], hours: [2, 2, 4] },
    expected: 81.25,
    tolerance: 1e-12,
    source: '29 CFR 1910.1000(d)(1)(ii), example in ppm',
    kind: 'published',
  },
  {
    calculation: 'DUSTAVERAGE',
    given: { concentrations: [150], hours: [2] },
    expected: 37.5,
    tolerance: 1e-12,
    source: '29 CFR 1910.1000(d)(1)(i): divided by 8 h though only 2 h were sampled',
    kind: 'derived',
  },
  {
    calculation: 'DUSTSUM',
    given: { concentrations: [500, 45, 40], limits: [1000, 200, 200] },
    expected: 0.925,
    tolerance: 1e-12,
    source: '29 CFR 1910.1000(d)(2)(ii), example in ppm',
    kind: 'published',
  },
];
