import { describe, expect, it } from 'vitest';
import { codeFiles, textOf } from './files.js';

const DOOR = 'taskpane/workbook/engine/';
/** These look at the engine itself, not at what we do with it. */
const LOOKS_AT_THE_ENGINE = ['tests/workbook/xlsx/nativeFunctions.test.ts'];
/** Parts of the mends that mend nothing by themselves. */
const SERVE_MENDS = ['firstCalculation.ts', 'groupsIn.ts', 'readPlaces.ts'];
const IMPORT = /(?:\bfrom|\bimport\(?)\s*'@univerjs\/[^']+'/g;

const outside = codeFiles.filter((name) => !name.startsWith(DOOR) && !LOOKS_AT_THE_ENGINE.includes(name));
const found = (names: readonly string[], what: RegExp) =>
  names.flatMap((name) => (textOf(name).match(what) ?? []).map((one) => `${name}: ${one}`));

describe('the grid engine', () => {
  const door = codeFiles.filter((name) => name.startsWith(DOOR));

  it('is imported through one door alone', () => {
    expect(found(door, IMPORT).length).toBeGreaterThan(30);
    expect(found(outside, IMPORT)).toEqual([]);
  });

  it('is mended by files each of which a test names that fails once the engine is cured', () => {
    const mends = door.filter((name) => name.startsWith(`${DOOR}mends/`)).map((name) => name.split('/').at(-1) ?? '');
    expect(mends.length).toBeGreaterThan(15);
    const tests = codeFiles.filter((name) => name.endsWith('.test.ts')).map(textOf);
    const unnamed = mends.filter((name) => !SERVE_MENDS.includes(name) && !tests.some((text) => text.includes(name)));
    expect(unnamed).toEqual([]);
  });

  it('is asked for its services in one place, since the way to them is private', () => {
    const way = new RegExp(['__get', 'Injector'].join(''), 'g');
    expect(found(door, way)).toHaveLength(1);
    expect(found(outside, way)).toEqual([]);
  });

  it('has one file of the door for each of its packages, so that nothing loads before its time', () => {
    const pages = new Set(['page', 'withoutPage', 'tools'].map((name) => `${DOOR}${name}.ts`));
    const packages = (name: string) => new Set(textOf(name).match(/@univerjs\/[\w-]+/g));
    const doors = door.filter((name) => !pages.has(name) && !name.slice(DOOR.length).includes('/'));
    expect(doors.length).toBeGreaterThan(8);
    expect(doors.filter((name) => packages(name).size > 1 && !name.endsWith('facade.ts'))).toEqual([]);
    const loadsPage = /\/engine\/page\.js'/;
    expect(codeFiles.filter((name) => loadsPage.test(textOf(name)))).toEqual(['taskpane/workbook/grid/boot.ts']);
    expect(found(codeFiles, /from '[^']*\/engine\/tools\.js'/g)).toEqual([]);
  });
});
