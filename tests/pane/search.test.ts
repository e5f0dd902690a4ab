import { describe, expect, it } from 'vitest';
import { german } from '../../functions/german/index.js';
import { catalogue, families } from '../../src/catalogue.js';
import { search } from '../../taskpane/pane/list/search.js';
import { TRADE_WORDS } from '../../taskpane/pane/list/tradeWords.js';

const found = (query: string, say?: (english: string) => string) =>
  search(families, query, say).flatMap(({ calculations }) => calculations.map(({ id }) => id));

describe('the search', () => {
  it('shows everything until something is typed', () => {
    expect(found('  ')).toEqual(catalogue.map(({ id }) => id));
  });

  it('finds a function by a part of its name in any case', () => {
    expect(found('swapd')).toEqual(['SWAPDOSE']);
    expect(found('POWDER.SwapDose')).toEqual(['SWAPDOSE']);
  });

  it('finds by words of the question, in any order', () => {
    expect(found('delivery powder')).toContain('DRYMASS');
  });

  it('finds by the label of an input or of an answer', () => {
    expect(found('slurry strength')).toEqual(expect.arrayContaining(['PUMPRATE', 'DOSEMADE']));
    expect(found('body feed rate')).toContain('BODYFEED');
  });

  it('finds a plan’s functions by the plan’s labels', () => {
    expect(found('septum radius run')).toContain('RUNLENGTH');
  });

  it.each([
    ['How long does my run last?', 'RUNREPORT'],
    ['What does it cost to filter a hectolitre', 'FILTRATIONCOST'],
    ['how much body feed do I need', 'BODYFEED'],
    ['how much powder do I need for the precoat', 'PRECOATMASS'],
    ['what do I set the pump to', 'PUMPRATE'],
    ['how thick is my filter cake', 'CAKEDEPTH'],
    ['how much spent cake do we throw away', 'SPENTCAKE'],
    ['how much silica gel for this haze', 'LADDERDOSE'],
    ['can I replace my gel by another one', 'SWAPDOSE'],
    ['what is the dry price of this offer', 'DRYPRICE'],
    ['which supplier is cheaper', 'DRYPRICE'],
    ['compare supplier quotes', 'RANKQUOTES'],
    ['the delivery is wetter than agreed, what do I get back', 'MOISTURECREDIT'],
    ['convert ppm to g per hl', 'TOUNIT'],
    ['how much water to mix the slurry', 'SLURRYWATER'],
    ['when is the slurry tank empty', 'CHARGEHOURS'],
    ['why does the pressure go up so fast', 'RISERATE'],
    ['how viscous is beer at 0 degrees', 'BEERVISCOSITY'],
    ['how long must the stabiliser stay in contact', 'CONTACTTIME'],
    ['read my trial log', 'FITRUN'],
    ['how many runs a year', 'RUNSPERYEAR'],
    ['how sure is the saving', 'SAVINGSPREAD'],
    ['how much dust may be in the air', 'DUSTAVERAGE'],
    ['how much iron gets into the beer', 'METALCARRY'],
    ['is my input in the usual range', 'RANGECHECK'],
  ])('answers “%s” with %s, among the first three', (question, id) => {
    expect(found(question).slice(0, 3)).toContain(id);
  });

  it.each([
    ['Wie lange dauert mein Filterlauf?', 'RUNREPORT'],
    ['Was kostet das Pulver je Hektoliter', 'COSTPERHL'],
    ['Wie dick ist der Kuchen', 'CAKEDEPTH'],
    ['Wie stelle ich die Dosierpumpe ein', 'PUMPRATE'],
    ['Was spart der neue Stabilisator', 'SAVING'],
    ['Wie feucht ist das Pulver', 'OVENMOISTURE'],
    ['Entsorgung des Kuchens', 'DISPOSALCOST'],
  ])('answers “%s” in the German pane with %s, among the first three', (question, id) => {
    expect(found(question, german.say).slice(0, 3)).toContain(id);
  });

  it.each([
    ['diatomaceous earth', 'Diatomeenerde', 'BODYFEED'],
    ['kieselguhr for the precoat', 'Kieselgur für die Voranschwemmung', 'PRECOATMASS'],
    ['turbidity', 'Trübung', 'HAZEGRADE'],
    ['turbidity in EBC', 'Trübung in EBC', 'HAZEGRADE'],
    ['NTU', 'NTU', 'TOUNIT'],
    ['PVPP', 'PVPP', 'POLYPHENOLS'],
    ['the filter is clogging', 'Der Filter ist verstopft', 'RISERATE'],
    ['gallons to litres', 'Gallonen in Liter', 'TOUNIT'],
    ['°P', '°P', 'TOUNIT'],
    ['barrels', 'Barrel', 'TOUNIT'],
    ['pounds per barrel', 'psi in bar', 'TOUNIT'],
    ['confidence', 'Vertrauensbereich', 'SAVINGSPREAD'],
    ['claim', 'Reklamation', 'MOISTURECREDIT'],
    ['currency', 'Währung', 'LANDEDPRICE'],
    ['payment terms', 'Zahlungsbedingungen', 'LANDEDPRICE'],
    ['minimum order', 'Mindestbestellmenge', 'YEARPOWDER'],
  ])('knows the words of the trade: “%s” and “%s” lead to %s, among the first three', (english, other, id) => {
    expect(found(english).slice(0, 3)).toContain(id);
    expect(found(other, german.say).slice(0, 3)).toContain(id);
  });

  it('leads each word of the trade to functions that exist, which it shows', () => {
    const known = new Set<string>(catalogue.map(({ id }) => id));
    for (const [said, ids] of TRADE_WORDS) {
      expect(ids.filter((id) => !known.has(id))).toEqual([]);
      for (const one of said.split(',')) {
        expect(`${one} ${found(one).slice(0, ids.length).toSorted()}`).toBe(`${one} ${ids.toSorted()}`);
        expect(one.trim().normalize('NFD').replace(/\p{M}/gu, '').toLowerCase()).toBe(one.trim());
      }
    }
    expect(TRADE_WORDS.length).toBeGreaterThan(10);
  });

  it('never shows more than twelve for a question', () => {
    expect(found('powder')).toHaveLength(12);
  });

  it('drops families in which nothing is left, and finds nothing for nonsense', () => {
    expect(search(families, 'pump').every(({ calculations }) => calculations.length > 0)).toBe(true);
    expect(found('qqqq')).toEqual([]);
  });
});
