import { calculation } from '../core/calculation.js';
import { isNoAnswer } from '../core/evaluate.js';
import { beerSolids, bodyFeed, viscosity, volume } from '../quantities.js';
import { EXAMPLE } from './example.js';
import { planInput, RUN_GROUPS } from './input.js';
import { runOf } from './run.js';
import { MIX_SOURCES } from './sources.js';
import { steppedRun } from './steps.js';

const each = { kind: 'series', least: 1, oneForAll: true, optional: true } as const;

export const runSteps = calculation({
  id: 'RUNSTEPS',
  summary: 'A run through steps: tank bottoms, several beers, or a body feed that is changed, and where it ends.',
  question: 'How far does a run get when the beer changes on the way?',
  inputs: {
    labels: planInput(RUN_GROUPS),
    volumes: {
      ...volume,
      kind: 'series',
      least: 1,
      label: 'Step volumes',
      limit: [0.001, 1e6],
      help: 'Beer of each step, in the order in which they run.',
    },
    feeds: { ...bodyFeed, ...each, label: 'Body feeds', help: 'Of each step, as bought; left out, that of the plan.' },
    solids: {
      ...beerSolids,
      ...each,
      limit: [0.5, 5000],
      label: 'Beer solids of each step',
      help: 'Dry, in each hL of that step’s beer; left out, those of the plan.',
    },
    viscosities: {
      ...viscosity,
      ...each,
      label: 'Viscosities',
      help: 'Of each step’s beer; left out, that of the plan. The start follows it where the plan says at which it was read.',
    },
  },
  output: {
    kind: 'table',
    fields: {
      step: { label: 'Step', unit: '' },
      volume: { label: 'Run', unit: 'hL' },
      pressure: { label: 'Pressure drop', unit: 'bar' },
      load: { label: 'Cake load', unit: 'kg/m²' },
      rise: { label: 'Mean rise', unit: 'bar/h' },
      remark: { label: 'Remark', text: true },
      time: { label: 'Run time', unit: 'h' },
      flow: { label: 'Beer flow', unit: 'hL/h' },
    },
  },
  method:
    'layer upon layer: Δp_cake^(1−n) = μ u (1 bar)^−n Σ α Δw, each layer with the resistance of its own mix and, on a candle, where it lies. A row stands for the end of a step, or for where the run ends within it; steps behind that are not reached. Where the plan has a Least flow, the pressure drop limit is held from then on by turning the flow down to it',
  sources: MIX_SOURCES,
  cautions: ['pressure', 'dust'],
  example: {
    given: { labels: EXAMPLE, volumes: [1000, 300, 1000], solids: [25, 60, 25] },
    result: { rows: 3 },
  },
  refuse: ({ labels: { values }, feeds, solids }) =>
    values.cakeResistance !== undefined && (feeds !== undefined || solids !== undefined)
      ? 'Body feed or beer solids vary from step to step, so permeabilities are needed: Cake resistance holds only for the mix that it was fitted on.'
      : undefined,
  compute: ({ labels: { values }, volumes, feeds, solids, viscosities }) => {
    const steps = Array.from(volumes, (beer, step) => ({
      volume: beer,
      plan: {
        ...values,
        bodyFeed: feeds?.[step] ?? values.bodyFeed,
        beerSolids: solids?.[step] ?? values.beerSolids,
        viscosity: viscosities?.[step] ?? values.viscosity,
      },
    }));
    const first = runOf((steps[0] as (typeof steps)[number]).plan);
    if (isNoAnswer(first)) return first;
    return steppedRun(steps).map(({ ends, ...one }, step) => ({
      ...one,
      step: step + 1,
      remark: ends.length > 0 ? `The run ends here by ${ends.join(' and ')}.` : 'none',
    }));
  },
});
