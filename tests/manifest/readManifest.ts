import { DOMParser, type Element } from '@xmldom/xmldom';

/** A manifest, read for questions about its elements. */
export type Manifest = {
  root: Element;
  /** Every element of this name, prefix left out. */
  all(name: string): Element[];
  /** The text of the first element of this name, or its DefaultValue. */
  text(name: string): string;
};

export const childrenOf = (element: Element): Element[] =>
  Array.from(element.childNodes).filter((node): node is Element => node.nodeType === node.ELEMENT_NODE);

export function readManifest(xml: string): Manifest {
  const root = new DOMParser().parseFromString(xml, 'text/xml').documentElement;
  if (!root) throw new Error('The manifest has no root element.');
  const all = (name: string) => Array.from(root.getElementsByTagNameNS('*', name));
  const text = (name: string) => {
    const [first] = all(name);
    return first?.getAttribute('DefaultValue') || first?.textContent || '';
  };
  return { root, all, text };
}
