import type { FakeSheet } from './fakeBook.js';

/** A sheet of the fake workbook with nothing on it. */
export function blankSheet(): FakeSheet {
  return {
    contents: new Map(),
    results: new Map(),
    formats: new Map(),
    validations: new Map(),
    looks: new Map(),
    widths: new Map(),
    names: new Map(),
    spills: new Map(),
    frozen: { rows: 0, columns: 0 },
    printed: '',
    page: {},
    conditions: [],
    charts: [],
  };
}
