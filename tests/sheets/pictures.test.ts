import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { starterSheets } from '../../src/sheets/index.js';
import { logList } from '../../src/sheets/trial/logList.js';
import { cellsOf, placeOf, type Shown, shown } from './shown.js';

describe.each(starterSheets)('the starter sheet $name', (starter) => {
  const { charts = [], conditions = [], rows, widths } = starter;
  let sheet: Shown;
  beforeAll(async () => {
    sheet = await shown(starter);
  });
  afterAll(() => sheet.dispose());

  it('has charts that read figures, each with as many across as upwards', () => {
    expect(charts.length).toBeGreaterThan(0);
    for (const { title, kind, series } of charts) {
      for (const one of series) {
        const [across, upwards] = [one.across, one.upwards].map((range) => sheet.range(range).flat());
        expect(across?.length, title).toBe(upwards?.length);
        const numbers = upwards?.filter((value) => typeof value === 'number') ?? [];
        expect(numbers.length, `${title}: ${one.name}`).toBeGreaterThan(0);
        const named = across?.filter((value) => typeof value === (kind === 'bars' ? 'string' : 'number')) ?? [];
        expect(named.length, `${title}: ${one.name}`).toBeGreaterThanOrEqual(numbers.length);
        expect(
          upwards?.some((value) => value === ''),
          'text would be drawn as 0',
        ).toBe(false);
      }
    }
  });

  it('puts its charts where nothing stands, and within the columns that are printed', () => {
    const taken = new Set<string>();
    for (const { place, title } of charts) {
      for (const cell of cellsOf(place).flat()) {
        const { row, column } = placeOf(cell);
        expect(column).toBeLessThan(widths.length);
        expect(sheet.cell(cell) ?? '', `${title} at ${cell}`).toBe('');
        expect(rows[row]?.[column]?.style ?? 'note', `${title} at ${cell}`).toMatch(/note|unit|heading/);
        expect(taken.has(cell)).toBe(false);
        taken.add(cell);
      }
    }
  });

  it('has no text that runs under a chart', () => {
    const letters = (column: number) => widths[column] ?? 10;
    for (const { place, title } of charts) {
      const [from, to] = place.split(':').map(placeOf);
      for (const [row, line] of rows.entries()) {
        if (row < (from?.row ?? 0) || row > (to?.row ?? 0)) continue;
        const last = line.slice(0, from?.column).findLastIndex(({ text }) => text);
        const room = Array.from({ length: (from?.column ?? 0) - last }, (_, one) => letters(last + one));
        const words = line[last]?.text ?? '';
        expect(
          room.reduce((sum, one) => sum + one, 0),
          `${title}: ${words}`,
        ).toBeGreaterThanOrEqual(words.length);
      }
    }
  });

  it('colours by judgements that stand on the sheet, each in one of three looks', () => {
    expect(conditions.length).toBeGreaterThan(0);
    for (const { range, formula, look } of conditions) {
      const [, by = '', word] = /^=(?:LEFT|RIGHT)\((\$?[A-Z]+\d+),\d\)="(.+)"$/.exec(formula) ?? [];
      const named = /^=ISNUMBER\(SEARCH\("(refused|unusual): "&ADDRESS\(.+\)&" ",\$([A-Z]+\d+)\)\)$/.exec(formula);
      if (named) expect(named[1]).toBe(look);
      else if (by) expect(word).toBe(look === 'example' ? 'example’s' : look);
      else expect(formula).toMatch(/^=N\(\$[A-Z]+\d+\)\*LEN\([A-Z]+\d+\)>0$/);
      const judged = String(sheet.cell(named?.[2] ?? (by || 'A1')) ?? '');
      if (named || by)
        expect(judged, `${range} by ${by}`).toMatch(/^(usual|sound|complete|unusual: .+|)(, example’s)?$/);
      expect(cellsOf(range).flat().length).toBeGreaterThan(0);
    }
  });

  it('has every figure that is to be filled in coloured where it is not usual', () => {
    const coloured = new Set(conditions.flatMap(({ range }) => cellsOf(range).flat()));
    // Readings of a log are too many: their state names them, in their row and above.
    const readings = new Set(
      logList.given.flatMap(({ key }) => (starter.names[key] ? cellsOf(starter.names[key]).flat() : [])),
    );
    const left: string[] = [];
    rows.forEach((row, r) => {
      row.forEach(({ style, validation }, c) => {
        const place = `${String.fromCharCode(65 + c)}${r + 1}`;
        if (style === 'input' && validation && !coloured.has(place) && !readings.has(place))
          left.push(`${place}: ${validation.message}`);
      });
    });
    expect(left).toEqual([]);
  });

  it('has no cells beyond the columns whose widths it states', () => {
    expect(Math.max(...rows.map((row) => row.length))).toBeLessThanOrEqual(widths.length);
  });
});
