import { runCurve } from '../../plan/runCurve.js';
import { axisTitleOf } from '../fields.js';
import type { At } from '../layout.js';
import { withoutHeader } from '../place.js';
import type { SheetChart } from '../sheet.js';
import { columns } from './lines.js';
import { CURVES } from './run.js';

export const dosingCharts = (at: At): readonly SheetChart[] => [
  {
    title: 'Pressure drop through the run',
    kind: 'lines',
    across: axisTitleOf(runCurve, 'volume'),
    upwards: axisTitleOf(runCurve, 'pressure'),
    series: columns.figures.map((name, side) => ({
      name,
      across: withoutHeader(at(`${CURVES[side]}.volume`)),
      upwards: withoutHeader(at(`${CURVES[side]}.pressure`)),
    })),
    place: at('curve.picture'),
  },
];
