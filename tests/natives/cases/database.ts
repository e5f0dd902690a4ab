import type { Family } from './case.js';

/** Sums of what fits: the list in J1:L6, what is asked in M1:N3. */
const calls = ['J1:L6,"price",M1:M2', 'J1:L6,2,M1:N3', 'J1:L6,"dose",M1:N2'];

export const database: Family = {
  DAVERAGE: calls,
  DCOUNT: calls,
  DCOUNTA: calls,
  DGET: ['J1:L6,"price",N1:N2', 'J1:L6,"price",M1:M2', 'J1:L6,"none",M1:M2'],
  DMAX: calls,
  DMIN: calls,
  DPRODUCT: calls,
  DSTDEV: ['J1:L6,"price",M1:M2'],
  DSTDEVP: ['J1:L6,"price",M1:M2'],
  DSUM: [...calls, 'J1:L6,9,M1:M2'],
  DVAR: ['J1:L6,"price",M1:M2'],
  DVARP: ['J1:L6,"price",M1:M2'],
};
