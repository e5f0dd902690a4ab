import { calculation } from '../core/calculation.js';
import { figure } from '../core/wording.js';
import { ERRORS_METHOD, ERRORS_SOURCE, errorFields } from '../errors/errorFields.js';
import { estimate } from '../errors/estimate.js';
import { sureness } from '../errors/lineFit.js';
import { extent } from '../numerics/extent.js';
import { fitLine } from '../numerics/line.js';
import { readingErrors } from '../numerics/readingErrors.js';
import { densityRefusal, oneRunLog, septumOf } from './fitInputs.js';
import { firstPointRemark, shapeRemark } from './lineRemarks.js';
import { logRemark } from './logRemark.js';
import { flatLoad, type Septum } from './pressureDrop.js';
import { DARCY_SOURCE, ROUND_SOURCE } from './sources.js';

const CURVES = {
  up: 'a compressible cake, blinding, or beer solids that rose during the run; the resistance is then a mean, never that at 1 bar (FITCAKE)',
  down: 'a round septum taken as flat, flow that fell, or beer that cleared; the resistance is then a mean',
};

/** What the pressure drop is fitted against, and what that is worth. */
interface Against {
  readonly x: Float64Array;
  /** Flat load, kg/m², for each unit of x. */
  readonly load: number;
  /** Growth of x for each m³ of beer, in the mean over the log. */
  readonly growth: number;
}

/** On a flat septum the volumes themselves serve, so that nothing is copied. */
function against(volumes: Float64Array, loadPerVolume: number, septum: Septum, precoat: number): Against {
  if (septum.septumRadius === 0) return { x: volumes, load: loadPerVolume, growth: 1 };
  const x = volumes.map((volume) => flatLoad(loadPerVolume * volume, septum, precoat));
  return { x, load: 1, growth: extent(x).span / extent(volumes).span };
}

export const fitRun = calculation({
  id: 'FITRUN',
  summary: 'Cake resistance and start pressure from the log of a run at constant flow.',
  question: 'What does my trial log say about cake and precoat?',
  inputs: oneRunLog(3),
  output: {
    kind: 'report',
    fields: {
      start: { label: 'Start pressure drop', unit: 'bar', error: true },
      risePerHour: { label: 'Rise', unit: 'bar/h', error: true },
      risePerHl: { label: 'Rise', unit: 'bar/hL', error: true },
      resistance: { label: 'Cake resistance', unit: 'm/kg', error: true },
      rSquared: { label: 'R²', unit: '' },
      residual: { label: 'Residual standard deviation', unit: 'bar' },
      rows: { label: 'Rows', unit: '' },
      shape: { label: 'Shape of the log', text: true },
      first: { label: 'First point', text: true },
      log: { label: 'Rows of the log', text: true },
      ...errorFields,
    },
  },
  method: `least squares of Δp = start + μ u α w over w = solids × volume / area; on a cylinder over (ρ r/2) ln(1 + w/(ρ r/2 + precoat load)), and the rises are means over the log. It assumes constant flow, steady beer and a rigid cake: of a compressible one the resistance is a mean over the log, and FITCAKE gives that at 1 bar. ${ERRORS_METHOD}`,
  sources: [DARCY_SOURCE, ROUND_SOURCE, ERRORS_SOURCE],
  cautions: ['pressure'],
  example: {
    given: {
      volumes: [0, 500, 1000, 1500, 2000],
      bars: [0.6, 1.4, 2.2, 3, 3.8],
      area: 50,
      flow: 250,
      viscosity: 2.8,
      solids: 135.55,
    },
    result: { rSquared: 1, shape: 'straight', log: 'in order' },
  },
  refuse: densityRefusal,
  compute: ({ volumes, bars, area, flow, viscosity, solids, septumRadius, cakeDensity, precoatLoad }) => {
    const { x, load, growth } = against(volumes, solids / area, septumOf({ septumRadius, cakeDensity }), precoatLoad);
    const line = fitLine(x, bars);
    if (line === undefined) return { none: 'All volumes are the same, so no rise can be told.' };
    if (!(line.slope > 0))
      return { none: 'The pressure drop does not rise over this log, so it tells no cake resistance.' };
    const { intercept, slope, told } = sureness(line, x, bars);
    return {
      ...told,
      start: estimate(line.intercept, intercept),
      risePerHour: estimate(line.slope, slope, growth * flow),
      risePerHl: estimate(line.slope, slope, growth),
      resistance: estimate(line.slope, slope, area / (load * viscosity * flow)),
      rSquared: line.rSquared,
      residual: line.deviation,
      rows: line.count,
      shape: shapeRemark(line, x, bars, CURVES, readingErrors),
      first: firstPointRemark(line, x, bars, 'start pressure drop', (value) => figure(value, 'bar')),
      log: logRemark(volumes, bars),
    };
  },
});
