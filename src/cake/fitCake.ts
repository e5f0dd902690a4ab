import { calculation } from '../core/calculation.js';
import { ERRORS_METHOD, ERRORS_SOURCE, errorFields, errorsRemark } from '../errors/errorFields.js';
import { densityRefusal, oneRunLog, septumOf } from './fitInputs.js';
import { logRemark } from './logRemark.js';
import { DARCY_SOURCE, POWER_SOURCE, ROUND_SOURCE } from './sources.js';
import { fitSqueezed, type Squeezed, squeezedRemark } from './squeezed.js';
import { squeezedFields } from './squeezedFields.js';

const { start, resistance, correlation, rise, from, until, remark } = squeezedFields;
const { autocorrelation, times, errors } = errorFields;

export const fitCake = calculation({
  id: 'FITCAKE',
  summary: 'Resistance at 1 bar and compressibility of the cake, from the log of one run at constant flow.',
  question: 'How compressible is my cake, by the log of a run?',
  inputs: oneRunLog(4),
  output: {
    kind: 'report',
    fields: {
      start: { ...start, error: true },
      resistance: { ...resistance, error: true },
      exponent: { label: 'Exponent', unit: '', error: true },
      correlation,
      rise,
      from,
      until,
      reached: { label: 'Pressure drop over the cake at the end', unit: 'bar' },
      rSquared: { label: 'R²', unit: '' },
      residual: { label: 'Residual standard deviation', unit: 'bar' },
      rows: { label: 'Rows', unit: '' },
      remark,
      log: { label: 'Rows of the log', text: true },
      autocorrelation,
      times,
      errors,
    },
  },
  method: `least squares of Δp = start + Δp_cake with Δp_cake^(1−n) = μ u α₁ w (1 bar)^−n, w the flat load as in FITRUN. Resistance at 1 bar goes into a plan’s Cake resistance and Exponent into its Compressibility, both from this one fit: their errors go together, by the correlation (of the exponent with the resistance’s logarithm). The rise is the mean between both readings. ${ERRORS_METHOD}`,
  sources: [DARCY_SOURCE, POWER_SOURCE, ROUND_SOURCE, ERRORS_SOURCE],
  cautions: ['pressure'],
  example: {
    given: {
      volumes: [0, 500, 1000, 1500, 2000],
      bars: [0.6, 0.85, 1.6, 2.85, 4.6],
      area: 50,
      flow: 250,
      viscosity: 2.8,
      solids: 135.55,
    },
    result: { exponent: 0.5, rSquared: 1, remark: 'none', log: 'in order' },
  },
  refuse: densityRefusal,
  compute: ({ septumRadius, cakeDensity, ...given }) => {
    const fitted = fitSqueezed([{ ...given, septum: septumOf({ septumRadius, cakeDensity }) }]);
    if (typeof fitted === 'number')
      return { none: 'The pressure drop does not rise over this log, so it tells no cake resistance.' };
    return {
      ...(fitted.runs[0] as Squeezed),
      exponent: fitted.exponent,
      rSquared: fitted.rSquared,
      residual: fitted.deviation,
      rows: given.volumes.length,
      remark: squeezedRemark(fitted),
      log: logRemark(given.volumes, given.bars),
      autocorrelation: fitted.errors?.autocorrelation,
      errors: errorsRemark(fitted.errors),
    };
  },
});
