import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import webpack, { type Configuration, type MultiStats } from 'webpack';
import { buildAddress } from './address.js';
import { buildLibrary } from './library.js';
import { notices, placesIn } from './notices.js';
import { dist } from './paths.js';
import { officeSource } from './policy.js';
import { buildStarters } from './starters.js';
import { functionsPart, type Part as Page, panePart, type Setting, workbookPart } from './webpack.js';

/** What webpack builds for the site, and the library that programs import. */
export type Part = Page | 'library';

const configurations: Record<Page, (setting: Setting) => Configuration> = {
  functions: functionsPart,
  pane: panePart,
  workbook: workbookPart,
};

/** What a host serves. */
export const pages = Object.keys(configurations) as readonly Page[];
export const parts: readonly Part[] = [...pages, 'library'];

const kibibytes = (bytes: number) => `${(bytes / 1024).toFixed(1)} KiB`;

function sizes(names: readonly Page[]): string {
  const line = (name: Page) => {
    const text = readFileSync(join(dist, `${name}.js`));
    return `  ${name}.js ${kibibytes(text.length)}, gzipped ${kibibytes(gzipSync(text, { level: 9 }).length)}`;
  };
  return names.map(line).join('\n');
}

/** What is made from the declarations: the metadata, and the page that its help links lead to. */
async function emitMetadata(address: string): Promise<void> {
  const { metadata } = await import('../functions/metadata.js');
  const { german } = await import('../functions/german/index.js');
  const write = (name: string, told: unknown) => writeFileSync(join(dist, name), `${JSON.stringify(told, null, 2)}\n`);
  write('functions.json', metadata(address));
  write('functions.de.json', metadata(address, german));
  const [{ functionsPage }, { families }] = await Promise.all([
    import('./scripts/functionsPage.js'),
    import('../src/catalogue.js'),
  ]);
  writeFileSync(join(dist, 'functions.html'), functionsPage(families));
}

function compile(list: Configuration[]): Promise<MultiStats> {
  const compiler = webpack(list);
  // One part at a time: the grid's alone fills the memory of a small machine.
  return new Promise((resolve, reject) => {
    compiler?.run((failure, stats) => {
      // Closing waits until the cache is on disk.
      compiler.close((closing) => (failure || closing || !stats ? reject(failure ?? closing) : resolve(stats)));
    });
  });
}

/** Builds pages and functions into dist/. A whole build starts from an empty folder. */
async function buildSite(names: readonly Page[]): Promise<string> {
  const setting: Setting = { address: buildAddress(), office: officeSource() };
  if (names.length === pages.length) rmSync(dist, { recursive: true, force: true });
  mkdirSync(dist, { recursive: true });
  const stats = await compile(names.map((name) => configurations[name](setting)));
  if (stats.hasErrors() || stats.hasWarnings()) {
    const account = stats.toString({ preset: 'errors-warnings', colors: false });
    if (stats.hasErrors()) throw new Error(account);
    console.warn(account);
  }
  if (names.includes('functions')) await emitMetadata(setting.address);
  // Only a whole build knows all that the site holds.
  if (names.length === pages.length) {
    const places = new Set(stats.stats.flatMap(({ compilation }) => placesIn(compilation)));
    writeFileSync(join(dist, 'licences.txt'), notices([...places]));
  }
  const starters = names.includes('workbook') ? `\n  ${await buildStarters()}` : '';
  return `Built for ${setting.address}, office.js ${setting.office}:\n${sizes(names)}${starters}`;
}

/** Builds the named parts: the site into dist/, the library into lib/. Throws with webpack's or the compiler's account. */
export async function build(names: readonly Part[] = parts): Promise<string> {
  const site = pages.filter((name) => names.includes(name));
  const accounts = site.length > 0 ? [await buildSite(site)] : [];
  if (names.includes('library')) accounts.push(buildLibrary());
  return accounts.join('\n');
}
