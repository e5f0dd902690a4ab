import { calculation } from '../core/calculation.js';
import { fromSI } from '../core/units.js';
import { errorFields } from '../errors/errorFields.js';
import { fromLogarithm, scaled } from '../errors/estimate.js';
import { POINTS_METHOD, pointsTold, STUDENT_SOURCE } from '../errors/points.js';
import { fitLine } from '../numerics/line.js';
import { cakeResistance } from '../quantities.js';
import { compressibility } from './inputs.js';

const { unit, limit, source } = cakeResistance;
const { times, errors } = errorFields;

function remark(exponent: number): string {
  const [least, most] = compressibility.limit;
  if (exponent < least)
    return 'The exponent comes out below 0, which no cake has: scatter, or tests that differ in more than pressure.';
  return exponent > most ? `Beyond ${most} the exponent serves no plan.` : 'none';
}

export const fitCompression = calculation({
  id: 'FITCOMPRESSION',
  summary: 'How cake resistance grows with pressure, from tests at several pressures.',
  question: 'How compressible is my cake?',
  inputs: {
    pressures: {
      kind: 'series',
      least: 2,
      label: 'Pressures',
      unit: 'bar',
      limit: [0.0001, 1000],
      usual: [0.2, 8],
      help: 'Pressure drop over the cake in each test.',
      source: 'Usual range: from a leaf test to a filter’s limit; common practice, no source.',
    },
    resistances: {
      kind: 'series',
      least: 2,
      label: 'Resistances',
      unit,
      limit,
      source,
      help: 'Cake resistance that each test gave (FITLEAF).',
    },
  },
  output: {
    kind: 'report',
    fields: {
      resistance: { label: 'Resistance at 1 bar', unit: 'm/kg', error: true },
      exponent: { label: 'Exponent', unit: '', error: true },
      rSquared: { label: 'R²', unit: '' },
      remark: { label: 'Remark', text: true },
      times,
      errors,
    },
  },
  method: `least squares through logarithms of resistance = resistance at 1 bar × (pressure / 1 bar)^exponent; R² is that of the logarithms. A fit of the resistances themselves weighs the tests otherwise. ${POINTS_METHOD}`,
  sources: [
    'Power law of compressible cakes: W. L. McCabe, J. C. Smith and P. Harriott, Unit Operations of Chemical Engineering, 5th edition, 1993, chapter 30 (edition and chapter from memory).',
    STUDENT_SOURCE,
  ],
  example: {
    given: { pressures: [1, 4], resistances: [1e11, 2e11] },
    result: { resistance: 1e11, exponent: 0.5, rSquared: 1, remark: 'none' },
  },
  compute: ({ pressures, resistances }) => {
    const line = fitLine(
      pressures.map((pressure) => Math.log(fromSI(pressure, 'bar'))),
      resistances.map(Math.log),
    );
    if (line === undefined) return { none: 'All pressures are the same, so no compressibility can be told.' };
    return {
      resistance: fromLogarithm(line.intercept, line.interceptError),
      exponent: scaled(line.slope, line.slopeError),
      rSquared: line.rSquared,
      remark: remark(line.slope),
      ...pointsTold(line.count - 2, 'tests'),
    };
  },
});
