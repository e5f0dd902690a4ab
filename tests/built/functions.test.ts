import { createContext, Script } from 'node:vm';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { builtText } from './builtText.js';

const script = builtText('functions.js');
const announced: { functions: { id: string; parameters: unknown[] }[] } = JSON.parse(builtText('functions.json'));

/** Runs the script in a world that has the language and one global, and nothing of a browser or of Node. */
function run(): Map<string, unknown> {
  const associated = new Map<string, unknown>();
  const CustomFunctions = { associate: (id: string, bound: unknown) => associated.set(id, bound) };
  new Script(script).runInContext(
    createContext({ CustomFunctions }, { codeGeneration: { strings: false, wasm: false } }),
  );
  return associated;
}

describe('the built functions', () => {
  it('need nothing but CustomFunctions, and announce what they associate', () => {
    const associated = run();
    expect(associated.size).toBeGreaterThan(0);
    expect([...associated.keys()].sort()).toEqual(announced.functions.map(({ id }) => id).sort());
    for (const bound of associated.values()) expect(bound).toBeTypeOf('function');
  });

  it('stay under 72 KiB, gzipped', () => {
    expect(gzipSync(script, { level: 9 }).length).toBeLessThan(72 * 1024);
  });
});
