import { readFileSync } from 'node:fs';
import { path } from './paths.js';

/** Licences that ask for no more than their notice, which `dist/licences.txt` gives. */
const PERMISSIVE = ['MIT', 'ISC', 'BSD-2-Clause', 'BSD-3-Clause', 'Apache-2.0', '0BSD', 'BlueOak-1.0.0'];

/**
 * Tools under other terms, with the reason why that does no harm. None may end in a build; the terms of each were read.
 */
const TOOLS: Readonly<Record<string, readonly [licence: string, reason: string]>> = {
  'axe-core': ['MPL-2.0', 'checks pages in browser tests; its files are used unchanged'],
  lightningcss: ['MPL-2.0', 'part of the test runner’s bundler; its files are used unchanged'],
  'caniuse-lite': ['CC-BY-4.0', 'data on browsers that the build reads'],
};

/** What is shipped under terms of its own, with the reason why that is allowed. */
const SHIPPED: Readonly<Record<string, readonly [licence: string, reason: string]>> = {
  '@microsoft/office-js': ['LICENSE', 'Microsoft’s terms allow to pass it on, unchanged, with an add-in for Office'],
};

/** Packages whose package.json names no licence: what their LICENSE file says. */
const BY_FILE: Readonly<Record<string, string>> = { '@univerjs/telemetry': 'Apache-2.0' };

export interface Package {
  readonly name: string;
  readonly version: string;
  /** As package.json writes it: an SPDX name or expression; empty where it says nothing. */
  readonly licence: string;
}

/** The folder of a package, from its place in the lock: `node_modules/a/node_modules/b`. */
export const nameAt = (place: string): string => place.replace(/^.*node_modules\//, '');

/** Every package that `npm ci` may install, those for other systems among them. */
export function lockedPackages(lock = readFileSync(path('package-lock.json'), 'utf8')): Package[] {
  const { packages } = JSON.parse(lock) as { packages: Record<string, { version: string; license?: string }> };
  return Object.entries(packages)
    .filter(([place]) => place !== '')
    .map(([place, { version, license }]) => {
      const name = nameAt(place);
      return { name, version, licence: license ?? BY_FILE[name] ?? '' };
    });
}

/** Of `A OR B` one is enough, of `A AND B` both must serve. */
export function isPermissive(expression: string): boolean {
  const plain = expression.replaceAll(/[()]/g, '');
  return plain.split(' OR ').some((one) => one.split(' AND ').every((part) => PERMISSIVE.includes(part.trim())));
}

const named = (list: typeof TOOLS, { name, licence }: Package): boolean =>
  Object.entries(list).some(
    ([known, [terms]]) => terms === licence && (name === known || name.startsWith(`${known}-`)),
  );

/** Why a package may not be used, or nothing: `shipped` where it ends in a build. */
export function licenceRefusal(one: Package, shipped: boolean): string | undefined {
  if (isPermissive(one.licence) || named(SHIPPED, one) || (!shipped && named(TOOLS, one))) return undefined;
  const terms = one.licence === '' ? 'names no licence' : `is under ${one.licence}`;
  return `${one.name} ${one.version} ${terms}${shipped ? ', and is part of a build' : ''}. Read its terms; .config/licences.ts has what is allowed.`;
}

/** How many packages there are under each licence, the most frequent first. */
export function tally(packages: readonly Package[]): [licence: string, count: number][] {
  const counts = new Map<string, number>();
  for (const { licence } of packages) counts.set(licence, (counts.get(licence) ?? 0) + 1);
  return [...counts].sort(([, one], [, other]) => other - one);
}

/** The packages under other than permissive terms, with the reason why they are here. */
export const reasons = (): string[] =>
  [...Object.entries(SHIPPED), ...Object.entries(TOOLS)].map(
    ([name, [licence, reason]]) => `${name} (${licence}): ${reason}`,
  );
