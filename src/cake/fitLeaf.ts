import { calculation } from '../core/calculation.js';
import { figure } from '../core/wording.js';
import { ERRORS_METHOD, ERRORS_SOURCE, errorFields } from '../errors/errorFields.js';
import { estimate } from '../errors/estimate.js';
import { sureness } from '../errors/lineFit.js';
import { fitLine } from '../numerics/line.js';
import { readingErrors } from '../numerics/readingErrors.js';
import { area, viscosity } from '../quantities.js';
import { firstPointRemark, shapeRemark } from './lineRemarks.js';

const SLIPS = 'The limits only keep out slips of the keyboard; the figure is your own.';

const CURVES = {
  up: 'the leaf blinds, or the suspension thickened',
  down: 'solids settled out, or the pressure rose',
};

export const fitLeaf = calculation({
  id: 'FITLEAF',
  summary: 'Cake and medium resistance from a leaf test at constant pressure.',
  question: 'How do cake and cloth resist, by my leaf test?',
  inputs: {
    seconds: {
      kind: 'series',
      least: 2,
      label: 'Times',
      unit: 's',
      limit: [1e-6, 1e8],
      help: 'Since the filtrate began to run, row by row.',
      source: SLIPS,
    },
    litres: {
      kind: 'series',
      least: 2,
      label: 'Filtrate',
      unit: 'L',
      limit: [1e-9, 1e7],
      help: 'Collected until then, row by row.',
      source: SLIPS,
    },
    area: {
      ...area,
      label: 'Leaf area',
      limit: [1e-6, 10_000],
      usual: [0.001, 1],
      help: 'Wetted area of the leaf, all sides together.',
    },
    pressure: {
      kind: 'number',
      label: 'Pressure',
      unit: 'bar',
      limit: [0.0001, 1000],
      usual: [0.2, 6],
      help: 'Pressure drop over cake and cloth, held through the test.',
      source: 'Usual range: from a water-jet vacuum to a filter’s limit; common practice, no source.',
    },
    viscosity: { ...viscosity, usual: [0.5, 5], help: 'Of the filtrate at the test’s temperature.' },
    solids: {
      kind: 'number',
      label: 'Solids',
      unit: 'g/L',
      limit: [0.0001, 2000],
      usual: [0.5, 100],
      help: 'Dry solids in the cake for each L of filtrate, not of suspension.',
      source: 'Usual range: common practice, no source.',
    },
  },
  output: {
    kind: 'report',
    fields: {
      slope: { label: 'Slope', unit: 's/m⁶', error: true },
      intercept: { label: 'Intercept', unit: 's/m³', error: true },
      resistance: { label: 'Cake resistance', unit: 'm/kg', error: true },
      medium: { label: 'Medium resistance', unit: '1/m', error: true },
      rSquared: { label: 'R²', unit: '' },
      shape: { label: 'Shape of the test', text: true },
      first: { label: 'First point', text: true },
      remark: { label: 'Remark', text: true },
      ...errorFields,
    },
  },
  method: `least squares, unweighted, of t/V = μ α c V/(2 A² Δp) + μ R_medium/(A Δp); the factor 2 belongs to t/V, not to dt/dV. It holds at this pressure alone where the cake is compressible. ${ERRORS_METHOD}`,
  sources: [
    'Filtration at constant pressure: W. L. McCabe, J. C. Smith and P. Harriott, Unit Operations of Chemical Engineering, 5th edition, 1993, chapter 30 (edition and chapter from memory).',
    ERRORS_SOURCE,
  ],
  example: {
    given: { seconds: [3, 10, 21], litres: [1, 2, 3], area: 0.05, pressure: 1, viscosity: 1, solids: 10 },
    result: { rSquared: 1, slope: 2e6, intercept: 1000, resistance: 1e11, medium: 5e9 * 1 },
  },
  compute: ({ seconds, litres, area, pressure, viscosity, solids }) => {
    const y = seconds.map((time, row) => time / (litres[row] as number));
    const line = fitLine(litres, y);
    if (line === undefined) return { none: 'All rows hold the same volume, so no resistance can be told.' };
    if (!(line.slope > 0))
      return { none: 'Time per volume does not grow with the volume, so the test tells no cake resistance.' };
    const { intercept, slope, told } = sureness(line, litres, y);
    return {
      ...told,
      slope: estimate(line.slope, slope),
      intercept: estimate(line.intercept, intercept),
      resistance: estimate(line.slope, slope, (2 * area * area * pressure) / (viscosity * solids)),
      medium: estimate(line.intercept, intercept, (area * pressure) / viscosity),
      rSquared: line.rSquared,
      shape: shapeRemark(line, litres, y, CURVES, readingErrors),
      first: firstPointRemark(line, litres, y, 'intercept', (value) => figure(value, 's/m³')),
      remark:
        line.intercept < 0
          ? 'The medium resistance comes out below 0, which cannot be: the first volumes or times are off, or the cloth was wet through late.'
          : 'none',
    };
  },
});
