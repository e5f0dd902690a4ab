import { describe, expect, it } from 'vitest';
import { isPermissive, licenceRefusal, lockedPackages, type Package } from '../../.config/licences.js';
import { notices } from '../../.config/notices.js';
import { textOf } from './files.js';

const under = (licence: string, name = 'powder-tools'): Package => ({ name, version: '1.0.0', licence });

describe('the licences of the packages', () => {
  it('are all allowed', () => {
    const packages = lockedPackages();
    expect(packages.length).toBeGreaterThan(300);
    expect(packages.flatMap((one) => licenceRefusal(one, false) ?? [])).toEqual([]);
  });

  it.each([
    'GPL-3.0-only',
    'AGPL-3.0-or-later',
    'LGPL-2.1',
    'MPL-2.0',
    'SEE LICENSE IN x',
    'UNLICENSED',
    '',
    'MIT AND GPL-2.0',
  ])('are refused by name where they are copyleft or unknown: "%s"', (licence) => {
    expect(licenceRefusal(under(licence), false)).toContain('powder-tools 1.0.0');
  });

  it.each(['MIT', '(BSD-3-Clause OR GPL-2.0)', 'MIT OR Apache-2.0', '(MIT AND ISC)'])('may be %s', (licence) => {
    expect(isPermissive(licence)).toBe(true);
  });

  it('may be weak copyleft for a tool that is named, never for what is shipped', () => {
    expect(licenceRefusal(under('MPL-2.0', 'axe-core'), false)).toBeUndefined();
    expect(licenceRefusal(under('MPL-2.0', 'axe-core'), true)).toContain('part of a build');
    expect(licenceRefusal(under('GPL-3.0-only', 'axe-core'), false)).toContain('GPL-3.0-only');
  });

  it('are found out where a package that ends in a build is a tool alone', () => {
    expect(() => notices(['node_modules/zod', 'node_modules/axe-core'])).toThrow('axe-core');
  });

  it('are read from the file where package.json names none', () => {
    expect(textOf('node_modules/@univerjs/telemetry/LICENSE')).toContain('Apache License');
  });
});
