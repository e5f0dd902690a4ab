import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { path } from '../../.config/paths.js';
import { codeFiles, importsOf, ownFiles, textOf } from './files.js';

/** The files that break a rule, each with what breaks it. */
const breaches = (names: string[], find: (name: string) => string[]) =>
  names.flatMap((name) => find(name).map((what) => `${name}: ${what}`));

const startsWithAny = (name: string, folders: string[]) => folders.some((folder) => name.startsWith(`${folder}/`));

describe('the repository', () => {
  it('is read by these tests', () => {
    expect(codeFiles).toContain('tests/repository/repository.test.ts');
    expect(codeFiles.length).toBeGreaterThan(20);
  });

  it('keeps its top level to what a newcomer should see first', () => {
    const expected = [
      ...['.ci', '.config', '.gitignore', 'CHANGELOG.md', 'DEVELOPERS.md', 'LICENSE', 'README.md', 'docs', 'functions'],
      ...['manifest.xml', 'package-lock.json', 'package.json', 'src', 'taskpane', 'tests', 'tsconfig.json'],
    ];
    const ignored = [
      '.git',
      ...textOf('.gitignore')
        .split('\n')
        .map((line) => line.replace(/\/$/, '')),
    ];
    expect(
      readdirSync(path())
        .filter((name) => !ignored.includes(name))
        .sort(),
    ).toEqual(expected.sort());
  });

  it('imports one way: taskpane to functions to src', () => {
    const forbidden: Record<string, string[]> = {
      src: ['functions', 'taskpane', 'tests', '.config'],
      functions: ['taskpane', 'tests', '.config'],
      taskpane: ['tests', '.config'],
    };
    for (const [folder, others] of Object.entries(forbidden)) {
      const files = codeFiles.filter((name) => name.startsWith(`${folder}/`));
      expect(breaches(files, (name) => importsOf(name).filter((one) => startsWithAny(one, others)))).toEqual([]);
    }
  });

  it('keeps the core free of the families of calculations', () => {
    const core = codeFiles.filter((name) => name.startsWith('src/core/'));
    const families = readdirSync(path('src'), { withFileTypes: true })
      .filter((entry) => entry.isDirectory() && !['core', 'numerics'].includes(entry.name))
      .map((entry) => `src/${entry.name}`);
    expect(families.length).toBeGreaterThan(3);
    expect(breaches(core, (name) => importsOf(name).filter((one) => startsWithAny(one, families)))).toEqual([]);
  });

  it('has no file of code above 200 lines', () => {
    const lines = (name: string) => textOf(name).split('\n').length - 1;
    expect(breaches(codeFiles, (name) => (lines(name) > 200 ? [`${lines(name)} lines`] : []))).toEqual([]);
  });

  it('leaves out no test, and runs none alone', () => {
    const tests = codeFiles.filter((name) => name.startsWith('tests/'));
    const left = /\b(?:it|test|describe)(?:\.\w+)*\.(?:skip|only|todo|fails|skipIf|runIf)\b/g;
    expect(breaches(tests, (name) => textOf(name).match(left) ?? [])).toEqual([]);
  });

  it('has tests of the source, of the build and in a browser', () => {
    for (const folder of ['tests/core/', 'tests/host/', 'tests/built/', 'tests/e2e/'])
      expect(codeFiles.some((name) => name.startsWith(folder) && name.endsWith('.test.ts'))).toBe(true);
  });

  it('says nothing about the machine that it was written on', () => {
    const texts = ownFiles.filter((name) => /\.(tsx?|md|json|html|css|svg|xml)$/.test(name) || name === '.ci/run');
    const machine = /(?<![\w.])\/(?:work|tmp|root|home)\/\w+/g;
    expect(breaches(texts, (name) => textOf(name).match(machine) ?? [])).toEqual([]);
  });

  it('makes no code from text at run time', () => {
    const shipped = codeFiles.filter((name) => startsWithAny(name, ['src', 'functions', 'taskpane']));
    expect(breaches(shipped, (name) => textOf(name).match(/\beval\(|\bnew Function\(/g) ?? [])).toEqual([]);
  });
});
