import { describe, expect, it } from 'vitest';
import { catalogue, families } from '../../src/catalogue.js';
import { search } from '../../taskpane/pane/search.js';

const found = (query: string) =>
  search(families, query).flatMap(({ calculations }) => calculations.map(({ id }) => id));

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
    ['how much powder do I need for the precoat', 'PRECOATMASS'],
    ['what do I set the pump to', 'PUMPRATE'],
    ['can I replace my gel by another one', 'SWAPDOSE'],
    ['is this powder too wet', 'OVENMOISTURE'],
    ['which supplier is cheaper', 'DRYPRICE'],
    ['why does the pressure go up so fast', 'RISERATE'],
    ['when is the slurry tank empty', 'CHARGEHOURS'],
    ['is the dust dangerous', 'DUSTAVERAGE'],
    ['Wie lange dauert mein Filterlauf?', 'RUNREPORT'],
    ['Was kostet das Pulver je Hektoliter', 'COSTPERHL'],
  ])('answers “%s” with %s, among few others', (question, id) => {
    expect(found(question)).toContain(id);
    expect(found(question).length).toBeLessThan(15);
  });

  it('drops families in which nothing is left, and finds nothing for nonsense', () => {
    expect(search(families, 'pump').every(({ calculations }) => calculations.length > 0)).toBe(true);
    expect(found('qqqq')).toEqual([]);
  });
});
