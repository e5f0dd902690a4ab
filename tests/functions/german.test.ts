import { describe, expect, it } from 'vitest';
import { german, TOLD } from '../../functions/german/index.js';
import { metadata } from '../../functions/metadata.js';
import { parametersOf } from '../../functions/parameters.js';
import { families } from '../../src/catalogue.js';

/** Every English text of the declarations that the descriptions and the pane show. */
const texts = new Set(
  families.flatMap(({ name, summary, calculations }) => [
    name,
    summary,
    ...calculations.flatMap((one) => [
      one.summary,
      one.question,
      ...parametersOf(one.inputs).flatMap(({ label, help, input }) => [
        label,
        help,
        ...Object.values(('unfit' in input && input.unfit) || {}),
      ]),
    ]),
  ]),
);

describe('the German of the declarations', () => {
  it('has every text of the declarations, and no other', () => {
    expect([...TOLD.keys()].sort()).toEqual([...texts].sort());
    expect(texts.size).toBeGreaterThan(400);
  });

  it('keeps ids of functions, the words of units and numbers apart from the words around them', () => {
    const ids = (text: string) => (text.match(/\b[A-Z]{6,}\b/g) ?? []).sort();
    for (const [english, told] of TOLD) expect([english, ids(told)]).toEqual([english, ids(english)]);
  });

  it('describes the same functions and parameters as the English does, with decimal commas', () => {
    const [inGerman, inEnglish] = [metadata('https://example.com', german), metadata('https://example.com')];
    const bones = (told: typeof inGerman) =>
      told.functions.map(({ id, helpUrl, parameters }) => [
        id,
        helpUrl,
        parameters.map(({ name, optional }) => [name, optional]),
      ]);
    expect(bones(inGerman)).toEqual(bones(inEnglish));
    const dryMass = inGerman.functions.find(({ id }) => id === 'DRYMASS');
    expect(dryMass?.description).toBe('Trockenmasse in einem Pulver bekannter Feuchte.');
    expect(dryMass?.parameters[1]?.description).toContain('Feuchte (ein Anteil von 0 bis 0,999): Wasser im Pulver');
    expect(JSON.stringify(inGerman)).not.toMatch(/preset|\bfrom \d/);
  });
});
