import { calculation } from '../core/calculation.js';
import { area, flow, septumRadius, viscosity } from '../quantities.js';
import {
  densityRefusal,
  dryPrecoat,
  optionalDensity,
  pressureLog,
  septumOf,
  solidsToCake,
  volumeLog,
} from './fitInputs.js';
import { logRemark } from './logRemark.js';
import { DARCY_SOURCE, POWER_SOURCE, ROUND_SOURCE } from './sources.js';
import { fitSqueezed, type Squeezed, squeezedRemark } from './squeezed.js';

export const fitCake = calculation({
  id: 'FITCAKE',
  summary: 'Resistance at 1 bar and compressibility of the cake, from the log of one run at constant flow.',
  question: 'How compressible is my cake, by the log of a run?',
  inputs: {
    volumes: { ...volumeLog, least: 4 },
    bars: { ...pressureLog, least: 4 },
    area,
    flow: { ...flow, help: 'Through the filter, held through the run.' },
    viscosity,
    solids: solidsToCake,
    septumRadius,
    cakeDensity: optionalDensity,
    precoatLoad: dryPrecoat,
  },
  output: {
    kind: 'report',
    fields: {
      start: { label: 'Start pressure drop', unit: 'bar', error: true },
      resistance: { label: 'Resistance at 1 bar', unit: 'm/kg', error: true },
      exponent: { label: 'Exponent', unit: '', error: true },
      correlation: { label: 'Correlation of both errors', unit: '' },
      rise: { label: 'Rise', unit: 'bar/h' },
      from: { label: 'Rise read from', unit: 'h' },
      until: { label: 'Rise read until', unit: 'h' },
      reached: { label: 'Pressure drop over the cake at the end', unit: 'bar' },
      rSquared: { label: 'R²', unit: '' },
      residual: { label: 'Residual standard deviation', unit: 'bar' },
      rows: { label: 'Rows', unit: '' },
      remark: { label: 'Remark', text: true },
      log: { label: 'Rows of the log', text: true },
    },
  },
  method:
    'least squares of Δp = start + Δp_cake with Δp_cake^(1−n) = μ u α₁ w (1 bar)^−n, w the flat load as in FITRUN. Resistance at 1 bar goes into a plan’s Cake resistance and Exponent into its Compressibility, both from this one fit: their errors go together, by the correlation (of the exponent with the resistance’s logarithm). The rise is the mean between both readings. Standard errors take the rows as independent, so many rows close together make them too small',
  sources: [DARCY_SOURCE, POWER_SOURCE, ROUND_SOURCE],
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
    };
  },
});
