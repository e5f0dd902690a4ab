import { readdirSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { dist } from '../../.config/paths.js';
import { builtText } from './builtText.js';

const KIB = 1024;
const gzipped = (name: string): number => gzipSync(builtText(name), { level: 9 }).length;
const scripts = readdirSync(dist).filter((name) => /^pane\.(?:.+\.)?js$/.test(name));
const isText = (name: string): boolean => name.startsWith('pane.texts-');

describe('the built pane', () => {
  it('starts with less than 100 KiB of code, gzipped, the calculation library in it and texts apart', () => {
    expect(gzipped('pane.js')).toBeGreaterThan(10 * KIB);
    expect(gzipped('pane.js')).toBeLessThan(100 * KIB);
  });

  it('loads no more than 96 KiB later, for formulas, pictures and the other tabs', () => {
    const later = scripts.filter((name) => name !== 'pane.js' && !isText(name));
    expect(later.length).toBeGreaterThan(0);
    expect(later.reduce((sum, name) => sum + gzipped(name), 0)).toBeLessThan(96 * KIB);
  });

  it('has one file of texts for each language', () => {
    expect(scripts.filter(isText).sort()).toEqual(['pane.texts-de.js', 'pane.texts-en.js']);
  });
});
