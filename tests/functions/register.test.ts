import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { catalogue } from '../../src/catalogue.js';

class HostError {
  constructor(
    readonly code: string,
    readonly message?: string,
  ) {}
}

type Associated = Map<string, (...args: unknown[]) => unknown>;

const runtime = (associated: Associated) => ({
  Error: HostError,
  associate: (id: string, fn: (...args: unknown[]) => unknown) => associated.set(id, fn),
});
let imported = 0;
/** Runs the script anew, and nothing of what it imports. */
const register = () => {
  imported += 1;
  const place = new URL(`../../functions/register.ts?time=${imported}`, import.meta.url);
  return import(/* @vite-ignore */ place.pathname + place.search);
};

describe('the registration of the worksheet functions', () => {
  let associated: Associated;
  beforeEach(() => {
    associated = new Map();
  });
  afterEach(() => vi.unstubAllGlobals());

  it('associates every function at once where the runtime is there', async () => {
    vi.stubGlobal('CustomFunctions', runtime(associated));
    await register();
    expect([...associated.keys()]).toEqual(catalogue.map(({ id }) => id));
    expect(associated.get('DRYMASS')?.(100, 0.65, {})).toEqual([[35]]);
  });

  it('answers in the host’s own errors, and knows them as they come in', async () => {
    vi.stubGlobal('CustomFunctions', runtime(associated));
    await register();
    const dryMass = associated.get('DRYMASS');
    expect(dryMass?.(100, 65, {})).toMatchObject({ code: '#VALUE!', message: expect.stringContaining('Moisture') });
    expect(dryMass?.([[1], [2]], [[0.1], [0.1], [0.1]], {})).toMatchObject({ 2: [{ code: '#N/A' }] });
    const divided = new HostError('#DIV/0!');
    expect(dryMass?.([[divided]], [[0.1]], {})).toBe(divided);
    expect(dryMass?.([[{ type: 'Error', basicValue: '#REF!' }]], [[0.1]], {})).toEqual(new HostError('#REF!'));
  });

  it('waits for a host whose runtime comes later', async () => {
    let ready = () => {};
    vi.stubGlobal('Office', {
      onReady: (callback: () => void) => {
        ready = callback;
      },
    });
    await register();
    ready();
    expect(associated.size).toBe(0);
    vi.stubGlobal('CustomFunctions', runtime(associated));
    ready();
    expect(associated.size).toBe(catalogue.length);
  });

  it('leaves a page alone that has neither', async () => {
    await expect(register()).resolves.toBeDefined();
    expect(associated.size).toBe(0);
  });
});
