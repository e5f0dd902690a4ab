import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { labelKey } from '../../src/core/planLabels.js';
import { labelled } from '../../src/core/wording.js';
import { PLAN, PLAN_GROUPS } from '../../src/plan/table.js';
import { call } from '../functions/answers.js';
import { planMatrices } from './sheet.js';

const [labels, values] = planMatrices();
const run = call('RUNLENGTH', labels, values);
const message = (...plan: [unknown, unknown]) => call('RUNLENGTH', ...plan);

const withRow = (label: string | null, value: unknown) =>
  [
    [...labels, [label]],
    [...values, [value]],
  ] as const;
const relabelled = (row: number, label: string) => labels.map((one, index) => (index === row ? [label] : one));

describe('the table of plan labels', () => {
  it('has labels that tell apart, each in a group and explained', () => {
    const names = Object.values(PLAN).map(({ label }) => label.toLowerCase());
    expect(new Set(names).size).toBe(names.length);
    for (const { group, help, source } of Object.values(PLAN)) {
      expect(PLAN_GROUPS).toContain(group);
      expect(help).toMatch(/\.$/);
      expect(source).toMatch(/\.$/);
    }
  });

  it.each([
    ['Filter area', 'Filter area m²'],
    ['Beer flow', 'Beer flow hL/h'],
    ['Viscosity at filter', 'Viscosity at filter mPa·s'],
    ['Disposal price', 'Disposal price per t'],
    ['Water price', 'Water price per m³'],
    ['Energy price', 'Energy price per kWh'],
    ['Beer value', 'Beer value per hL'],
    ['Labour price', 'Labour price per h'],
    ['Filter aid price', 'Filter aid price per kg'],
    ['Other cost', 'Other cost per hL'],
    ['Year volume', 'Year volume hL'],
  ])('reads %s and %s as one label', (name, withUnit) => {
    expect(labelKey(PLAN, withUnit)).toBeDefined();
    expect(labelKey(PLAN, withUnit)).toBe(labelKey(PLAN, name));
  });

  it('reads every label in any case, with outer spaces, brackets about its unit and plain powers', () => {
    for (const [key, { label, unit }] of Object.entries(PLAN)) {
      expect(labelKey(PLAN, `  ${labelled(label, unit).toUpperCase()} `)).toBe(key);
      if (!unit.startsWith('money') && unit !== '' && unit !== 'fraction') {
        expect(labelKey(PLAN, `${label} (${unit})`)).toBe(key);
        expect(labelKey(PLAN, `${label} ${unit.replace('²', '2').replace('³', '3')}`)).toBe(key);
      }
    }
  });
});

describe('a plan in a sheet', () => {
  it('is read in any order, blank labels skipped', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray([...labels.keys()], { minLength: labels.length }), (order) => {
        const one = [
          [[null], ...order.map((row) => labels[row]), ['']],
          [['note'], ...order.map((row) => values[row]), [0]],
        ] as const;
        expect(call('RUNLENGTH', ...one)).toEqual(run);
      }),
      { numRuns: 20 },
    );
  });

  it('refuses an unknown label by its row, with the nearest there is', () => {
    expect(message(relabelled(5, 'Cake spase'), values)).toMatchObject({
      code: '#VALUE!',
      message: 'Labels, row 6: "Cake spase" is no label of a plan. The nearest is "Cake space kg/m²".',
    });
  });

  it('refuses another unit in a label', () => {
    expect(message(relabelled(0, 'Filter area ft²'), values)).toMatchObject({
      message: 'Labels, row 1: "Filter area ft²" names another unit. Write "Filter area m²", and its value in m².',
    });
    expect(message(...withRow('Disposal price per kg', 0.07))).toMatchObject({
      message: expect.stringContaining('"Disposal price per t"'),
    });
    expect(message(...withRow('Compressibility %', 20))).toMatchObject({
      message: expect.stringContaining('without a unit'),
    });
  });

  it('refuses a doubled label with both rows', () => {
    expect(message(...withRow('filter AREA', 50))).toMatchObject({
      message: `Labels, row ${labels.length + 1}: "Filter area" stands twice, in rows 1 and ${labels.length + 1}.`,
    });
  });

  it('refuses a missing label by name, with what it must hold', () => {
    expect(message(...planMatrices({ cakeSpace: undefined }))).toMatchObject({
      message:
        'Values: "Cake space kg/m²" is missing. Cake space must be from 0.001 to 1000 kg/m², but nothing was given.',
    });
  });

  it('refuses a value by its row and both limits', () => {
    expect(message(...planMatrices({ aidMoisture: 5 }))).toMatchObject({
      message:
        'Values, row 9: Filter aid moisture must be a fraction from 0 to 0.999, but 5 was given. For 5 percent write 5 % or 0.05.',
    });
    expect(message(...planMatrices({ beerSolids: 0 }))).toMatchObject({
      message: 'Values, row 12: Beer solids must be from 0.5 to 5000 g/hL, but the cell is blank or 0.',
    });
  });

  it('refuses a column of values shorter than its labels', () => {
    expect(message(labels, values.slice(1))).toMatchObject({
      message: `Labels and Values must be equally long, but Labels has ${labels.length} rows and Values ${labels.length - 1}.`,
    });
  });

  it('refuses both ways to say how the cake resists, naming the rows, and leaves a blank way aside', () => {
    expect(message(...withRow('Cake resistance m/kg', 2e11))).toMatchObject({
      message: `Values, rows 14, 15, 16, ${labels.length + 1}: Give either Cake resistance or permeabilities, but Aid permeability, Beer solids permeability and Stabiliser permeability are given as well. Leave one way blank.`,
    });
    for (const blank of [null, 0, '']) expect(message(...withRow('Cake resistance m/kg', blank))).toEqual(run);
  });

  it('refuses neither way, half a way, and a stabiliser without its permeability', () => {
    const without = {
      aidPermeability: undefined,
      beerSolidsPermeability: undefined,
      stabiliserPermeability: undefined,
    };
    expect(message(...planMatrices(without))).toMatchObject({
      message: expect.stringContaining('Neither Cake resistance nor permeabilities are given.'),
    });
    expect(message(...planMatrices({ aidPermeability: undefined }))).toMatchObject({
      message: expect.stringContaining('Aid permeability is missing or blank'),
    });
    expect(message(...planMatrices({ stabiliserPermeability: undefined }))).toMatchObject({
      message: expect.stringContaining('wherever Stabiliser dose is above 0'),
    });
    expect(message(...planMatrices({ stabiliserPermeability: undefined, stabiliserDose: 0 }))).toEqual([
      [expect.any(Number)],
    ]);
  });

  it('leaves the values of groups that a function does not use unread', () => {
    expect(message(...withRow('Other cost per hL', 'later'))).toEqual(run);
    expect(call('FILTRATIONCOST', ...withRow('Other cost per hL', 'later'))).toMatchObject({ code: '#VALUE!' });
    expect(call('BESTFEED', ...planMatrices({ yearVolume: undefined }))).toEqual(expect.any(Array));
  });

  it('takes 0 and blank in the run limit as none', () => {
    for (const blank of [0, null, '']) expect(message(...withRow('Run limit hL', blank))).toEqual(run);
    expect(message(...withRow('Run limit hL', 1000))).toEqual([[1000]]);
  });

  it('has no run where the limit does not lie above the start or the precoat fills the space, and says why', () => {
    expect(message(...planMatrices({ pressureLimit: 0.6 }))).toMatchObject({
      code: '#N/A',
      message: 'No run: the pressure drop limit, 0.6 bar, does not lie above the start pressure drop, 0.6 bar.',
    });
    expect(message(...planMatrices({ cakeSpace: 0.7 }))).toMatchObject({
      code: '#N/A',
      message: 'No run: the precoat alone, 0.796 kg/m² dry, fills the cake space of 0.7 kg/m².',
    });
  });

  it('names every limit that a run meets at once', () => {
    const volume = (run as number[][])[0]?.[0] as number;
    const ends = (limit: number) =>
      Object.fromEntries(call('RUNREPORT', ...planMatrices({ runLimit: limit })) as [string, string][])['Ends by'];
    expect(ends(volume)).toBe('cake space and run limit');
    expect(ends(volume * (1 + 1e-7))).toBe('cake space');
    expect(ends(volume * (1 - 1e-7))).toBe('run limit');
  });

  it('takes a blank price for missing and a typed 0 for nothing, and says which cell it read', () => {
    const cost = (value: unknown) =>
      call(
        'FILTRATIONCOST',
        labels,
        labels.map(([label], row) => [label === 'Stabiliser price' ? value : values[row]?.[0]]),
      );
    const row = labels.findIndex(([label]) => label === 'Stabiliser price') + 1;
    for (const blank of [null, '', ' '])
      expect(cost(blank)).toMatchObject({
        code: '#VALUE!',
        message: expect.stringMatching(
          new RegExp(
            `^Values, row ${row}: Stabiliser price must be .*, but the cell is blank. Type 0 where it is nothing.$`,
          ),
        ),
      });
    expect(cost(0)).toContainEqual(['Stabiliser', 0, 0]);
  });
});
