import { calculation } from '../core/calculation.js';
import { ERRORS_METHOD, ERRORS_SOURCE, errorFields, errorsRemark, timesOf } from '../errors/errorFields.js';
import { estimate } from '../errors/estimate.js';
import { medianSlope } from '../numerics/medianSlope.js';
import { robustErrors } from '../numerics/robustErrors.js';
import { riseRate } from './riseRate.js';

const { autocorrelation, times, errors } = errorFields;

export const riseReport = calculation({
  id: 'RISEREPORT',
  summary: 'Pressure rise of a run that one bad reading does not move, with its error.',
  question: 'How fast does the pressure rise, and how sure is that?',
  inputs: { hours: { ...riseRate.inputs.hours, least: 3 }, bars: { ...riseRate.inputs.bars, least: 3 } },
  output: {
    kind: 'report',
    fields: {
      rise: { label: 'Rise', unit: 'bar/h', error: true },
      far: { label: 'Readings far off', unit: '' },
      rows: { label: 'Rows', unit: '' },
      autocorrelation,
      times,
      errors,
    },
  },
  method: `the rise of RISERATE. Readings further than 3 standard deviations off its line, as good readings scatter, are told; the error takes what stands between their neighbours in their place. ${ERRORS_METHOD}`,
  sources: [...riseRate.sources, ERRORS_SOURCE],
  cautions: ['pressure'],
  example: {
    given: { hours: [0, 1, 2, 3, 4], bars: [0.6, 0.9, 1.2, 4, 1.8] },
    result: { far: 1, rows: 5 },
  },
  compute: ({ hours, bars }) => {
    const rise = medianSlope(hours, bars);
    if (rise === undefined) return { none: 'All readings stand at the same time, so no rise can be told.' };
    const robust = robustErrors(rise, hours, bars);
    return {
      rise: estimate(rise, robust.slope),
      far: robust.far,
      rows: hours.length,
      autocorrelation: robust.errors?.autocorrelation,
      times: timesOf([robust.slope]),
      errors: errorsRemark(robust.errors),
    };
  },
});
