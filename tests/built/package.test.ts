import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import webpack from 'webpack';
import { path, root } from '../../.config/paths.js';
import { dependencies } from '../../package.json' with { type: 'json' };
import * as calculations from '../../src/calculations.js';

const KIB = 1024;

const PROGRAM = `import { calculate, dryMass, isRefused, runReport } from 'powderbook';
import { schemaOf } from 'powderbook/schema';
const mass: number | { readonly none: string } | { readonly refused: string } = calculate(dryMass, { mass: 1000, moisture: 0.65 });
const run = calculate(runReport, { labels: { values: { 'Filter area': 50 } } });
export const why: string = isRefused(run) ? run.refused : '';
const shape = schemaOf(dryMass).safeParse({ mass: 1000, moisture: 65 });
console.log(JSON.stringify([mass, why, shape.success]));
`;

const WRONG = `import { calculate, dryMass } from 'powderbook';
export const none = calculate(dryMass, { mass: 1000, moistness: 0.65 });
`;

let project: string;

/** The list of the files that a package would hold, as npm says it. */
function packed(): string[] {
  const words = ['pack', '--ignore-scripts', '--json', '--pack-destination', project];
  const [{ filename, files }] = JSON.parse(execFileSync('npm', words, { cwd: root, encoding: 'utf8' }));
  mkdirSync(join(project, 'node_modules'));
  execFileSync('tar', ['-xzf', join(project, filename), '-C', project]);
  cpSync(join(project, 'package'), join(project, 'node_modules/powderbook'), { recursive: true });
  return (files as { path: string }[]).map((file) => file.path);
}

/** The compiler's account of both programs, one error a line. */
function compile(setting: readonly string[]): string[] {
  const words = [
    '--strict',
    '--noEmit',
    '--target',
    'es2022',
    '--lib',
    'es2023,dom',
    ...setting,
    'program.ts',
    'wrong.ts',
  ];
  const tsc = [path('node_modules/typescript/bin/tsc'), ...words];
  const { stdout } = spawnSync(process.execPath, tsc, { cwd: project, encoding: 'utf8' });
  return stdout.trim().split('\n');
}

/** What a bundler makes of one line of import, in bytes. */
async function bundled(name: string, text: string): Promise<string> {
  writeFileSync(join(project, `${name}.mjs`), text);
  await new Promise<void>((resolve, reject) =>
    webpack(
      {
        mode: 'production',
        context: project,
        entry: `./${name}.mjs`,
        output: { path: join(project, 'bundle'), filename: `${name}.js` },
      },
      (failure, stats) => (failure || stats?.hasErrors() ? reject(failure ?? stats?.toString()) : resolve()),
    ),
  );
  return readFileSync(join(project, `bundle/${name}.js`), 'utf8');
}

describe('the package that npm pack makes', { timeout: 60_000 }, () => {
  let files: string[];

  beforeAll(() => {
    project = mkdtempSync(join(tmpdir(), 'powderbook-'));
    files = packed();
    for (const name of Object.keys(dependencies))
      symlinkSync(path('node_modules', name), join(project, 'node_modules', name));
    writeFileSync(join(project, 'package.json'), '{"type":"module"}');
    writeFileSync(join(project, 'program.ts'), PROGRAM);
    writeFileSync(join(project, 'wrong.ts'), WRONG);
  });

  afterAll(() => rmSync(project, { recursive: true, force: true }));

  it('holds the library, its types and the documents, and nothing else', () => {
    const documents = ['CHANGELOG.md', 'LICENSE', 'README.md', 'docs/functions.md', 'docs/methods.md', 'package.json'];
    const others = files.filter((name) => !/^lib\/(?:\w+\/)*\w+\.(?:js|d\.ts)$/.test(name));
    expect(others.sort()).toEqual(documents);
    expect(files.length).toBeGreaterThan(200);
    expect(files.filter((name) => /test|sheets\//.test(name) && !/testPermeability/.test(name))).toEqual([]);
  });

  it('says in an editor what each calculation takes and answers, with units', () => {
    const types = files.filter((name) => name.endsWith('.d.ts'));
    const documented = types.filter((name) =>
      /^ \* Answers .*Method: /m.test(readFileSync(join(project, 'package', name), 'utf8')),
    );
    expect(documented.length).toBe(Object.keys(calculations).length);
    const dryMass = readFileSync(join(project, 'package/lib/moisture/dryMass.d.ts'), 'utf8');
    expect(dryMass).toContain(' * - `mass`: Mass kg, from 0 to ');
  });

  it('says nothing about the machine that it was made on', () => {
    const telling = files.filter((name) => readFileSync(join(project, 'package', name), 'utf8').includes(root));
    expect(telling).toEqual([]);
  });

  it.each([
    ['nodenext', ['--module', 'nodenext', '--moduleResolution', 'nodenext']],
    ['bundler', ['--module', 'esnext', '--moduleResolution', 'bundler']],
  ])('is typed for a strict program with moduleResolution %s, a wrong key refused', (_, setting) => {
    const errors = compile(setting);
    expect(errors.length).toBe(1);
    expect(errors[0]).toMatch(/^wrong\.ts.*moistness/);
  });

  it('runs in Node as it is', () => {
    writeFileSync(join(project, 'program.mjs'), PROGRAM.replace(/: number \|[^=]*=/, ' =').replace(': string', ''));
    const { stdout, stderr } = spawnSync(process.execPath, ['program.mjs'], { cwd: project, encoding: 'utf8' });
    expect(stderr).toBe('');
    const [mass, why, fits] = JSON.parse(stdout);
    expect([mass, fits]).toEqual([350, false]);
    expect(why).toContain('is missing');
  });

  it('leaves in a bundle only what is imported', async () => {
    const nothing = await bundled('nothing', `import 'powderbook';`);
    const one = await bundled(
      'one',
      `import { calculate, dryMass } from 'powderbook'; console.log(calculate(dryMass, {}));`,
    );
    const longest = await bundled(
      'longest',
      `import { calculate, savingSpread } from 'powderbook'; console.log(calculate(savingSpread, {}));`,
    );
    const all = await bundled('all', `import * as everything from 'powderbook'; console.log(everything);`);
    const size = (text: string) => gzipSync(text, { level: 9 }).length;
    expect(nothing.length).toBe(0);
    expect(one).not.toContain('RUNREPORT');
    expect(size(one)).toBeLessThan(8 * KIB);
    expect(size(longest)).toBeLessThan(16 * KIB);
    expect(size(all)).toBeLessThan(72 * KIB);
    expect(size(one) * 3).toBeLessThan(size(all));
  });
});
