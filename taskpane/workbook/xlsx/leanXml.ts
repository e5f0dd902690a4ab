import { DOMParser } from '@xmldom/xmldom';
import type { XmlElement, XmlNode } from './readXml.js';

/** Attributes as the parser hands them over with the beginning of an element. */
interface Given {
  readonly length: number;
  getQName(place: number): string;
  getValue(place: number): string;
}

class Text implements XmlNode {
  readonly nodeType = 3;
  nextSibling: XmlNode | null = null;
  constructor(readonly textContent: string) {}
}

class Element implements XmlElement {
  readonly nodeType = 1;
  nextSibling: XmlNode | null = null;
  firstChild: XmlNode | null = null;
  #last: Text | Element | undefined;
  readonly #given: readonly (readonly [name: string, value: string])[];

  constructor(
    readonly localName: string,
    given: Given,
    readonly above: Element | undefined,
  ) {
    this.#given = Array.from({ length: given.length }, (_, place) => [given.getQName(place), given.getValue(place)]);
  }

  append(node: Text | Element) {
    if (this.#last) this.#last.nextSibling = node;
    else this.firstChild = node;
    this.#last = node;
  }

  get textContent(): string {
    let text = '';
    for (let node = this.firstChild; node; node = node.nextSibling) text += node.textContent;
    return text;
  }

  get attributes() {
    const item = (place: number) => {
      const [name, value] = this.#given[place] ?? [];
      return name === undefined || value === undefined ? null : { localName: name.replace(/^.*:/, ''), value };
    };
    return { length: this.#given.length, item };
  }

  getAttribute(name: string): string | null {
    return this.#given.find(([own]) => own === name)?.[1] ?? null;
  }
}

const nothing = () => {};

function broken(message: string): never {
  throw new Error(message);
}

/** Takes from the parser what workbooks need, and no more: a whole tree has a dozen objects for each cell. */
function leanTree() {
  const doc: { documentElement?: Element; normalize(): void } = { normalize: nothing };
  let at: Element | undefined;
  return {
    doc,
    /** The parser asks where it is. */
    get currentElement() {
      return at;
    },
    startDocument: nothing,
    endDocument: nothing,
    startPrefixMapping: nothing,
    endPrefixMapping: nothing,
    processingInstruction: nothing,
    comment: nothing,
    startCDATA: nothing,
    endCDATA: nothing,
    startDTD: () => broken('A document type.'),
    startElement(_space: string, localName: string, _name: string, attributes: Given) {
      const element = new Element(localName, attributes, at);
      if (at) at.append(element);
      else if (doc.documentElement) broken('A second root.');
      else doc.documentElement = element;
      at = element;
    },
    endElement() {
      at = at?.above;
    },
    characters(text: string, start: number, length: number) {
      if (at && length > 0) at.append(new Text(text.substring(start, start + length)));
    },
    // Of all that it warns of, only this mark is XML: a letter that was lost before the text was written.
    warning: (message: string) => (message.startsWith('Unicode replacement') ? undefined : broken(message)),
    error: broken,
    fatalError: broken,
  };
}

/** The root of an XML text; throws where it is none. It needs no page, so that a thread of its own can read a file. */
export function parseXml(text: string): XmlElement | undefined {
  let tree: ReturnType<typeof leanTree> | undefined;
  // The parser makes its tree with `new`, which takes what the function gives back.
  function Tree() {
    tree = leanTree();
    return tree;
  }
  new DOMParser({ domHandler: Tree, locator: false }).parseFromString(text, 'text/xml');
  return tree?.doc.documentElement;
}
