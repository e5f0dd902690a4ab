import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Compilation, Module } from 'webpack';
import { licenceRefusal, lockedPackages, nameAt, type Package } from './licences.js';
import { path } from './paths.js';

/** Beside what the modules come from: webpack's own start code, and what the pages copy. */
const BESIDE: Readonly<Record<string, readonly string[]>> = { pane: ['node_modules/@microsoft/office-js'] };

function* filesOf(modules: Iterable<Module>): Generator<string> {
  for (const one of modules) {
    if ('modules' in one) yield* filesOf(one.modules as Iterable<Module>);
    const file = one.nameForCondition();
    if (file) yield file;
  }
}

/** Where the packages lie whose modules ended in a part, relative to the top. */
export function placesIn({ modules, name }: Compilation): string[] {
  const places = [...filesOf(modules)]
    .map((file) => file.replaceAll('\\', '/'))
    .map((file) => /^.*\/(node_modules\/(?:@[^/]+\/)?[^/]+)/.exec(file)?.[0])
    .filter((place) => place !== undefined)
    .map((place) => place.slice(path().length + 1));
  return [...new Set(['node_modules/webpack', ...places, ...(BESIDE[name ?? ''] ?? [])])];
}

function packageAt(place: string): Package {
  const { version } = JSON.parse(readFileSync(path(place, 'package.json'), 'utf8'));
  const found = lockedPackages().find((one) => one.name === nameAt(place) && one.version === version);
  return found ?? { name: nameAt(place), version, licence: '' };
}

/** What the package's own files say of its licence; some bring none, and package.json's word must do. */
function textsAt(place: string, { licence }: Package): string {
  const files = existsSync(path(place)) ? readdirSync(path(place)) : [];
  const texts = files.filter((name) => /^(?:licen[cs]e|notice|copying)/i.test(name)).sort();
  if (texts.length > 0) return texts.map((name) => readFileSync(join(path(place), name), 'utf8').trim()).join('\n\n');
  const { author, homepage, repository } = JSON.parse(readFileSync(path(place, 'package.json'), 'utf8'));
  const by = typeof author === 'object' ? author?.name : author;
  const from = homepage ?? (typeof repository === 'object' ? repository?.url : repository);
  return `The package brings no licence text. Its package.json names ${licence}${by ? `, by ${by}` : ''}${from ? ` (${from})` : ''}.`;
}

const RULE = '='.repeat(80);

/** The notices that the licences of a build's packages ask for. Throws where one may not be shipped. */
export function notices(places: readonly string[]): string {
  const packages = places.map((place) => [place, packageAt(place)] as const);
  const refusals = packages.flatMap(([, one]) => licenceRefusal(one, true) ?? []);
  if (refusals.length > 0) throw new Error(refusals.join('\n'));
  const sorted = packages.sort(([, one], [, other]) => (one.name < other.name ? -1 : 1));
  const section = ([place, one]: readonly [string, Package]) =>
    `${RULE}\n${one.name} ${one.version} (${one.licence})\n${RULE}\n\n${textsAt(place, one)}\n`;
  return `Powderbook contains these packages, each under its own licence.\n\n${sorted.map(section).join('\n')}`;
}
