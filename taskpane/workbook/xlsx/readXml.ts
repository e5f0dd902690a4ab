import { Refusal } from './refusal.js';

/** As much of a page's or a test's XML nodes as is needed here. */
export interface XmlNode {
  readonly nodeType: number;
  readonly nextSibling: XmlNode | null;
  readonly textContent: string | null;
}

export interface XmlElement extends XmlNode {
  readonly localName: string | null;
  readonly firstChild: XmlNode | null;
  readonly attributes: {
    readonly length: number;
    item(place: number): { readonly localName: string | null; readonly value: string } | null;
  };
  getAttribute(name: string): string | null;
}

/** Turns the text of a part into its root element; throws or returns nothing where it is no XML. */
export type ParseXml = (text: string) => XmlElement | null | undefined;

const ELEMENT = 1;

/** The elements right below one, all or those of a name. Files differ in prefixes, so these are not looked at. */
export function childrenOf(element: XmlElement | undefined, name?: string): XmlElement[] {
  const found: XmlElement[] = [];
  for (let node = element?.firstChild ?? null; node; node = node.nextSibling) {
    if (node.nodeType !== ELEMENT) continue;
    const child = node as XmlElement;
    if (name === undefined || child.localName === name) found.push(child);
  }
  return found;
}

/** The first element at the end of a way down. */
export function childOf(element: XmlElement | undefined, ...way: readonly string[]): XmlElement | undefined {
  let at = element;
  for (const name of way) at = childrenOf(at, name)[0];
  return at;
}

export const attribute = (element: XmlElement | undefined, name: string): string | undefined =>
  element?.getAttribute(name) ?? undefined;

/** An attribute under whatever prefix the file gives it, such as `r:id`. */
export function prefixed(element: XmlElement, name: string): string | undefined {
  for (let place = 0; place < element.attributes.length; place += 1) {
    const one = element.attributes.item(place);
    if (one?.localName === name) return one.value;
  }
  return undefined;
}

export const isTrue = (value: string | undefined): boolean => value === '1' || value === 'true';

/** A whole number from 0 on; undefined where it is none. */
export const whole = (value: string | undefined): number | undefined =>
  value !== undefined && /^\d{1,9}$/.test(value) ? Number(value) : undefined;

/** Characters that XML cannot hold are written as `_x0007_`, and such a text itself as `_x005F_x0007_`. */
export const unescaped = (text: string): string =>
  text.includes('_x')
    ? text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code) => String.fromCharCode(Number.parseInt(code, 16)))
    : text;

function textOf(bytes: Uint8Array): string {
  const [first, second] = bytes;
  const encoding =
    first === 0xff && second === 0xfe ? 'utf-16le' : first === 0xfe && second === 0xff ? 'utf-16be' : 'utf-8';
  return new TextDecoder(encoding).decode(bytes);
}

/** The root of a part. A document type could name files outside or entities that grow without end: refused unread. */
export function rootOf(bytes: Uint8Array, parse: ParseXml, refused: { doctype: string; damaged: string }): XmlElement {
  const text = textOf(bytes);
  if (text.includes('<!DOCTYPE') || text.includes('<!ENTITY')) throw new Refusal(refused.doctype);
  let root: XmlElement | null | undefined;
  try {
    root = parse(text);
  } catch {
    root = undefined;
  }
  if (!root) throw new Refusal(refused.damaged);
  return root;
}
