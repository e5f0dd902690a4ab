import { septumOf } from '../../../../src/cake/fitInputs.js';
import { fitRun } from '../../../../src/cake/fitRun.js';
import { cakePressureDrop, flatLoad } from '../../../../src/cake/pressureDrop.js';
import { CAUTIONS } from '../../../../src/cautions.js';
import { fromSI, toSI } from '../../../../src/core/units.js';
import { axisOf, figureOf, shown } from './figure.js';
import { fitPicture } from './fit.js';
import { difference, paired, quality, remark } from './fitSpeech.js';

export const runFit = figureOf(fitRun, (si, answer, speech) => {
  const { words, amount, count } = speech;
  const { volumes, bars } = fitRun.inputs;
  const { start, risePerHour, shape, first, log } = fitRun.output.fields;
  const septum = septumOf(si);
  const flowing = {
    flux: si.flow / si.area,
    viscosity: si.viscosity,
    resistance: answer.resistance.value,
    compressibility: 0,
  };
  const fitted = (volume: number) => {
    const laid = (toSI(volume, volumes.unit) * si.solids) / si.area;
    const pressure = answer.start.value + cakePressureDrop(flatLoad(laid, septum, si.precoatLoad), flowing);
    return fromSI(pressure, bars.unit);
  };
  return fitPicture(
    {
      x: axisOf(volumes),
      y: axisOf(bars),
      points: paired(shown(si.volumes, volumes.unit), shown(si.bars, bars.unit)),
      fitted,
      residual: difference(speech, bars.unit),
      summary: [
        words.fitRun.summary(
          count(si.volumes.length),
          amount(answer.start.value, start.unit),
          amount(answer.risePerHour.value, risePerHour.unit),
        ),
        ...quality(speech, answer.rSquared),
      ],
      notes: [
        { text: words.fitRun.note },
        remark(shape, answer.shape),
        remark(first, answer.first),
        remark(log, answer.log),
        { text: CAUTIONS.pressure, english: true },
      ],
    },
    speech,
  );
});
