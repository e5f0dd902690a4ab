import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { developmentAddress } from '../../.config/address.js';
import { path } from '../../.config/paths.js';
import { readManifest } from './readManifest.js';

const manifest = readManifest(readFileSync(path('manifest.xml'), 'utf8'));

const urlOf = new Map(
  manifest.all('Image').map((image) => [image.getAttribute('id'), image.getAttribute('DefaultValue')] as const),
);

/** Width and height stand in the first chunk of a PNG, after the eight bytes of its signature. */
function pixels(url: string): string {
  const png = readFileSync(path('taskpane', url.replace(`${developmentAddress}/`, '')));
  expect(png.subarray(1, 4).toString()).toBe('PNG');
  return `${png.readUInt32BE(16)} × ${png.readUInt32BE(20)}`;
}

describe('the icons', () => {
  const placed = manifest.all('Image').filter((image) => image.hasAttribute('size'));

  it('stand in 16, 32 and 80 pixels by the group, by its button and its menu, and in the menu on cells', () => {
    expect(placed.map((image) => image.getAttribute('size'))).toEqual(Array(4).fill(['16', '32', '80']).flat());
  });

  it.each(placed.map((image) => [image.getAttribute('size')!, urlOf.get(image.getAttribute('resid'))!]))(
    'have the size they are announced with: %s',
    (size, url) => {
      expect(pixels(url)).toBe(`${size} × ${size}`);
    },
  );

  it('have 32 and 64 pixels in the list of add-ins', () => {
    expect(pixels(manifest.text('IconUrl'))).toBe('32 × 32');
    expect(pixels(manifest.text('HighResolutionIconUrl'))).toBe('64 × 64');
  });
});
