import type { Reading } from './reading.js';
import { attribute, childrenOf, rootOf, type XmlElement } from './readXml.js';
import type { Parts } from './readZip.js';
import { Refusal } from './refusal.js';

export interface Relation {
  readonly id: string;
  /** The last word of the relation's type, which the older and the stricter form of files share. */
  readonly kind: string;
  readonly target: string;
  readonly outside: boolean;
}

/** A package of parts that point at each other. */
export interface Package {
  readonly names: readonly string[];
  root(name: string): XmlElement | undefined;
  /** Where a part points; the package itself is the part without a name. */
  relations(name: string): readonly Relation[];
}

const folderOf = (name: string) => name.slice(0, name.lastIndexOf('/') + 1);

/** A target as its part sees it, from the top of the package on. */
function resolved(folder: string, target: string): string {
  const steps: string[] = [];
  for (const step of (target.startsWith('/') ? target : folder + target).split('/')) {
    if (step === '..') steps.pop();
    else if (step !== '' && step !== '.') steps.push(step);
  }
  return steps.join('/');
}

export function packageOf(parts: Parts, { words, parse }: Reading): Package {
  const root = (name: string) => {
    const bytes = parts.read(name);
    return bytes && rootOf(bytes, parse, { doctype: words.doctype, damaged: words.damagedPart(name) });
  };
  return {
    names: parts.names,
    root,
    relations(name) {
      const folder = folderOf(name);
      const own = root(`${folder}_rels/${name.slice(folder.length)}.rels`);
      return childrenOf(own, 'Relationship').map((one) => ({
        id: attribute(one, 'Id') ?? '',
        kind: (attribute(one, 'Type') ?? '').split('/').at(-1) ?? '',
        target: resolved(folder, attribute(one, 'Target') ?? ''),
        outside: attribute(one, 'TargetMode') === 'External',
      }));
    },
  };
}

/** The part that the package or another part calls by a kind, and its root; nothing where there is none. */
export function related(all: Package, relations: readonly Relation[], kind: string): XmlElement | undefined {
  const found = relations.find((one) => one.kind === kind && !one.outside);
  return found && all.root(found.target);
}

/** The name of the part that holds the workbook. */
export function workbookPart(all: Package, { words }: Reading): string {
  const found = all.relations('').find(({ kind, outside }) => kind === 'officeDocument' && !outside);
  if (!found) throw new Refusal(words.noWorkbook);
  return found.target;
}
