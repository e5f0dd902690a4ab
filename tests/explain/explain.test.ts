import { describe, expect, it } from 'vitest';
import { Unknown } from '../../taskpane/formula/unknown.js';
import type { Cells, Host } from '../../taskpane/host/host.js';
import type { Reference } from '../../taskpane/host/reference.js';
import { explain } from '../../taskpane/pane/explain/explain.js';
import { CellError } from '../../taskpane/workbook/formula/cellError.js';

const cells: Cells = [
  [1000, 0.65, -3],
  ['Filter area m²', 50, null],
  ['Viscosity at filter', 12, null],
];

let requests = 0;
const host = {
  read: async (references: readonly Reference[]) => {
    requests++;
    return references.map((one) => {
      if (one.kind === 'name') return one.name === 'dose' ? [[90]] : undefined;
      if (one.kind !== 'range') return undefined;
      return cells.slice(one.top, (one.bottom ?? 2) + 1).map((row) => row.slice(one.left, (one.right ?? 2) + 1));
    });
  },
} as unknown as Host;

const explained = (formula: string) => explain({ sheet: 'Here', address: 'D1', formula, value: 0 }, host);
const only = async (formula: string) => {
  const [first] = await explained(formula);
  if (!first) throw new Error(`${formula} has no call.`);
  return first;
};

describe('the explanation of a cell', () => {
  it('tells each input with its value, its verdict and its place, after one request to the workbook', async () => {
    requests = 0;
    const { calculation, inputs, result } = await only('=POWDER.DRYMASS(A1,B1)');
    expect(requests).toBe(1);
    expect(calculation.id).toBe('DRYMASS');
    expect(result).toEqual([[350]]);
    expect(inputs.map(({ given }) => given.parameter.label)).toEqual(['Mass', 'Moisture']);
    expect(inputs.map(({ judged }) => judged[0]?.cell)).toEqual([1000, 0.65]);
    expect(inputs[1]?.given.reference).toMatchObject({ sheet: 'Here', top: 0, left: 1 });
  });

  it('gives a refused input the sentence of the function, which is the sentence of the result too', async () => {
    const { inputs, result } = await only('=POWDER.DRYMASS(C1,B1)');
    const [mass] = inputs[0]?.judged ?? [];
    expect(mass?.judgement).toBe('refused');
    const error = (result as readonly (readonly unknown[])[])[0]?.[0] as CellError;
    expect(error).toBeInstanceOf(CellError);
    expect(error.message).toBe(mass?.sentence);
  });

  it('stands calls inside calls at the input that they serve', async () => {
    const { inputs } = await only('=POWDER.BODYFEED(300,2*POWDER.SWAPDOSE(60,"hydrogel","adsorptive"))');
    expect(inputs[0]?.calls).toEqual([]);
    expect(inputs[1]?.calls.map(({ calculation }) => calculation.id)).toEqual(['SWAPDOSE']);
    expect(inputs[1]?.judged[0]?.cell).toBe(102);
    expect(inputs[1]?.calls[0]?.inputs.at(-1)?.given.value).toBeNull();
  });

  it('follows a name, and says which part only the workbook can calculate', async () => {
    const { inputs, result } = await only('=POWDER.BODYFEED(MAX(A1:A2),dose)');
    expect(inputs[1]?.judged[0]?.cell).toBe(90);
    expect(inputs[0]?.given.value).toEqual(new Unknown('function', 'MAX'));
    expect(result).toEqual(new Unknown('function', 'MAX'));
  });

  it('judges the values of a plan each by its own label', async () => {
    const { inputs } = await only('=POWDER.RUNLENGTH(A2:A3,B2:B3)');
    expect(inputs[1]?.judged.map(({ input, judgement }) => [input.label, judgement])).toEqual([
      ['Filter area', 'usual'],
      ['Viscosity at filter', 'unusual'],
    ]);
  });

  it('has nothing to say of a formula without our functions, or of an unfinished one', async () => {
    expect(await explained('=SUM(A1:A2)')).toEqual([]);
    expect(await explained('=POWDER.DRYMASS(A1')).toEqual([]);
  });
});
