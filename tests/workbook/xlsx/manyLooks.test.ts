import { describe, expect, it } from 'vitest';
import { gridOfBook } from '../../../taskpane/workbook/grid/ofBook.js';
import type { Book } from '../../../taskpane/workbook/xlsx/book.js';
import { writeBook } from '../../../taskpane/workbook/xlsx/writeBook.js';
import { processorTime } from '../../processorTime.js';
import { readOf } from './handMade.js';

const MANY = 20_000;
const look = (number: number) => ({ color: `#${number.toString(16).padStart(6, '0')}` });
const rows = Array.from({ length: MANY }, (_, number) => [
  { value: number, look: look(number), format: `0.0"${number}"` },
]);
const many: Book = { sheets: [{ name: 'S', rows, widths: [], names: {}, headerRows: 0 }] };
const offer = { id: '098b3cf6-6077-476e-8a4f-c023d196bfdc', version: '0.1.0.0' };

describe('a workbook with 20,000 different looks', () => {
  const { result: bytes, took } = processorTime(() => writeBook(many, offer));

  // It took 22 s where each look was searched for among all, and 1.3 s on the same busy machine without.
  it('is written without a search through all of them', () => {
    expect(took).toBeLessThan(6000);
  });

  it('keeps each look and format in the file', () => {
    const read = readOf(bytes).book.sheets[0]?.rows;
    expect(read?.map((row) => row?.[0]?.look?.color)).toEqual(rows.map(([cell]) => cell?.look.color));
    expect(read?.map((row) => row?.[0]?.format)).toEqual(rows.map(([cell]) => cell?.format));
  });

  it('is made ready for the grid', () => {
    const { result, took } = processorTime(() => gridOfBook(many));
    expect(Object.keys(result.styles)).toHaveLength(MANY);
    expect(took).toBeLessThan(4000);
  });
});
