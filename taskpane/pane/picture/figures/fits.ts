import { fitCompression } from '../../../../src/cake/fitCompression.js';
import { fitLeaf } from '../../../../src/cake/fitLeaf.js';
import { fromSI, toSI } from '../../../../src/core/units.js';
import { ladderFit } from '../../../../src/stabiliser/ladderFit.js';
import type { Axis } from '../picture.js';
import { axisOf, figureOf, shown } from './figure.js';
import { fitPicture } from './fit.js';
import { runFit } from './fitRun.js';
import { difference, paired, quality, remark } from './fitSpeech.js';

const ladder = figureOf(ladderFit, (si, answer, speech) => {
  const { words, amount } = speech;
  const { doses, hazes } = ladderFit.inputs;
  const { start, plateau, largest } = ladderFit.output.fields;
  const [top, floor, rate] = [answer.start.value, answer.plateau.value, answer.rate.value];
  return fitPicture(
    {
      x: axisOf(doses),
      y: { ...axisOf(hazes), fromZero: true },
      points: paired(shown(si.doses, doses.unit), shown(si.hazes, hazes.unit)),
      fitted: (dose) => fromSI(floor + (top - floor) * Math.exp(-rate * toSI(dose, doses.unit)), hazes.unit),
      residual: difference(speech, hazes.unit),
      plateau: { at: fromSI(floor, hazes.unit), text: words.ladder.plateau(amount(floor, plateau.unit)) },
      summary: [
        words.ladder.summary(
          amount(top, start.unit),
          amount(floor, plateau.unit),
          amount(answer.largest ?? 0, largest.unit),
        ),
        ...quality(speech, answer.rSquared),
      ],
      notes: [{ text: words.ladder.note }],
    },
    speech,
  );
});

const leaf = figureOf(fitLeaf, (si, answer, speech) => {
  const { words, amount } = speech;
  const { litres } = fitLeaf.inputs;
  const { intercept, resistance, medium, shape, first } = fitLeaf.output.fields;
  const y: Axis = { label: words.leaf.time, unit: intercept.unit };
  const perVolume = Array.from(si.seconds, (time, row) => time / (si.litres[row] as number));
  return fitPicture(
    {
      x: axisOf(litres),
      y,
      points: paired(shown(si.litres, litres.unit), shown(perVolume, y.unit)),
      fitted: (volume) => fromSI(answer.intercept.value + answer.slope.value * toSI(volume, litres.unit), y.unit),
      residual: difference(speech, y.unit),
      summary: [
        words.leaf.summary(amount(answer.resistance.value, resistance.unit), amount(answer.medium.value, medium.unit)),
        ...quality(speech, answer.rSquared),
      ],
      notes: [{ text: words.leaf.note }, remark(shape, answer.shape), remark(first, answer.first)],
    },
    speech,
  );
});

const compression = figureOf(fitCompression, (si, answer, speech) => {
  const { words, amount, count } = speech;
  const { pressures, resistances } = fitCompression.inputs;
  const { resistance } = fitCompression.output.fields;
  return fitPicture(
    {
      x: { ...axisOf(pressures), logarithmic: true },
      y: { ...axisOf(resistances), logarithmic: true },
      points: paired(shown(si.pressures, pressures.unit), shown(si.resistances, resistances.unit)),
      // The pressure counts in bar, since the resistance is that at 1 bar.
      fitted: (pressure) => answer.resistance.value * pressure ** answer.exponent.value,
      residual: { label: words.compression.ratio, unit: 'fraction', ratio: true },
      summary: [
        words.compression.summary(
          count(Number(answer.exponent.value.toPrecision(4))),
          amount(answer.resistance.value, resistance.unit),
        ),
        ...quality(speech, answer.rSquared),
      ],
      notes: [{ text: words.compression.note }],
    },
    speech,
  );
});

export const fitFigures = [runFit, ladder, leaf, compression] as const;
