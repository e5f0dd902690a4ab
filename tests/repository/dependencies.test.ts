import { describe, expect, it } from 'vitest';
import { textOf } from './files.js';

const { dependencies = {}, devDependencies = {} } = JSON.parse(textOf('package.json'));
const versions: [string, string][] = Object.entries({ ...dependencies, ...devDependencies });
const locked: Record<string, { license?: string; dev?: boolean }> = JSON.parse(textOf('package-lock.json')).packages;

describe('the packages', () => {
  it('are pinned to exact versions', () => {
    expect(versions.length).toBeGreaterThan(10);
    expect(versions.filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
  });

  it('of the grid engine all have one version', () => {
    const grid = versions.filter(([name]) => name.startsWith('@univerjs/'));
    expect(grid.length).toBeGreaterThan(10);
    expect(new Set(grid.map(([, version]) => version)).size).toBe(1);
  });

  it('bring no part of the grid engine that is not open', () => {
    const names = Object.keys(locked).map((name) => name.replace(/^.*node_modules\//, ''));
    expect(
      names.filter((name) => /^@univerjs-pro\/|^@univerjs\/(presets|preset-|.*advanced|.*collaboration)/.test(name)),
    ).toEqual([]);
  });
});
