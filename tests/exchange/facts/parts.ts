import { DOMParser, type Element } from '@xmldom/xmldom';
import { strFromU8, unzipSync } from 'fflate';

/** The elements right below another, or those of one name. */
export const below = (element: Element | undefined, name?: string): Element[] =>
  Array.from(element?.childNodes ?? []).filter(
    (one): one is Element => one.nodeType === 1 && (name === undefined || (one as Element).localName === name),
  );

/** The first element that a way of names leads to. */
export const at = (element: Element | undefined, ...way: readonly string[]): Element | undefined =>
  way.reduce<Element | undefined>((from, name) => below(from, name)[0], element);

export const everywhere = (element: Element | undefined, name: string): Element[] =>
  Array.from(element?.getElementsByTagNameNS('*', name) ?? []);

export const said = (element: Element | undefined, name: string): string | undefined =>
  element?.hasAttribute(name) ? (element.getAttribute(name) ?? undefined) : undefined;

export const isOn = (word: string | undefined): boolean => word === '1' || word === 'true';

export interface Target {
  readonly id: string;
  readonly kind: string;
  /** A part by its whole name, or an address outside. */
  readonly target: string;
}

/** A file's parts by name, read without anything of the project's own reader. */
export interface FileParts {
  readonly names: readonly string[];
  root(name: string | undefined): Element | undefined;
  targets(name: string): readonly Target[];
}

export function partsIn(bytes: Uint8Array): FileParts {
  const all = unzipSync(bytes);
  const root = (name: string | undefined): Element | undefined => {
    const data = name === undefined ? undefined : all[name];
    return data
      ? (new DOMParser().parseFromString(strFromU8(data), 'text/xml').documentElement ?? undefined)
      : undefined;
  };
  return {
    names: Object.keys(all),
    root,
    targets(name) {
      const folder = name.slice(0, name.lastIndexOf('/') + 1);
      return below(root(`${folder}_rels/${name.slice(folder.length)}.rels`), 'Relationship').map((one) => {
        const target = said(one, 'Target') ?? '';
        const outside = said(one, 'TargetMode') === 'External';
        return {
          id: said(one, 'Id') ?? '',
          kind: said(one, 'Type')?.split('/').at(-1) ?? '',
          target: outside ? target : new URL(target, `file:///${folder}`).pathname.slice(1),
        };
      });
    },
  };
}
