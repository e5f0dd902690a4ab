import { describe, expect, it } from 'vitest';
import { buildAddress, developmentAddress } from '../../.config/address.js';
import { metadata } from '../../functions/metadata.js';

describe('the address that a build is made for', () => {
  it('is the development address where none is given', () => {
    expect(buildAddress('')).toBe(developmentAddress);
  });

  it('loses its closing slash, so that the names of files can follow', () => {
    expect(buildAddress('https://powder.example.com/')).toBe('https://powder.example.com');
    expect(buildAddress('https://example.com/filter/powder/')).toBe('https://example.com/filter/powder');
  });

  it.each(['powder.example.com', 'http://powder.example.com', 'https://example.com/?a=1'])(
    'is refused with the address given where Excel could not use it: %s',
    (given) => {
      expect(() => buildAddress(given)).toThrow(given);
    },
  );

  it('leads every help link', () => {
    const { functions } = metadata('https://powder.example.com');
    expect(functions.length).toBeGreaterThan(0);
    expect(functions.filter(({ helpUrl }) => !helpUrl.startsWith('https://powder.example.com/'))).toEqual([]);
  });
});
