import { DOMParser } from '@xmldom/xmldom';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../../.config/properties.js';
import { parseXml } from '../../../taskpane/workbook/xlsx/leanXml.js';
import { attribute, childOf, childrenOf, prefixed, type XmlElement } from '../../../taskpane/workbook/xlsx/readXml.js';

const root = (text: string) => parseXml(text) as XmlElement;

/** A tree as nested lists: name, attributes, what is inside. */
const shape = (element: XmlElement): unknown => {
  const inside: unknown[] = [];
  for (let node = element.firstChild; node; node = node.nextSibling)
    if (node.nodeType === 1) inside.push(shape(node as XmlElement));
    else if (node.nodeType === 3) inside.push(node.textContent);
  const given = Array.from({ length: element.attributes.length }, (_, place) => element.attributes.item(place));
  return [element.localName, given.map((one) => [one?.localName, one?.value]), inside];
};

describe('the lean tree of a part', () => {
  it('has elements under any prefix, attributes, and texts with entities and marked sections', () => {
    const book = root(
      '<?xml version="1.0"?><!-- by hand --><x:book xmlns:x="m" xmlns:r="l"><x:sheet r:id="7" name="A &amp; B">' +
        'one\ufffd &lt;<![CDATA[ & two]]>&#x33;<x:b>three</x:b></x:sheet><x:sheet/></x:book>',
    );
    expect(book.localName).toBe('book');
    expect(childrenOf(book, 'sheet')).toHaveLength(2);
    const sheet = childOf(book, 'sheet') as XmlElement;
    expect(attribute(sheet, 'name')).toBe('A & B');
    expect(attribute(sheet, 'none')).toBeUndefined();
    expect(prefixed(sheet, 'id')).toBe('7');
    expect(sheet.textContent).toBe('one\ufffd < & two3three');
  });

  it.each(['', 'text', '<a>', '<a></b>', '<a b="1" b="2"/>', '<a b=1/>', '<a/><b/>', '<a>&none;</a>', '<a><b</a>'])(
    'is refused where the text is no XML: %s',
    (text) => {
      expect(() => parseXml(text)).toThrow();
    },
  );

  it('is refused where a document type is declared', () => {
    expect(() => parseXml('<!DOCTYPE a [<!ENTITY b "c">]><a>&b;</a>')).toThrow();
  });

  it('is the same as the whole tree of the parser', () => {
    const text = fc
      .string()
      .map((one) => one.replace(/[^\w &<>"']/g, '').replace(/[&<>"']/g, (mark) => `&#${mark.charCodeAt(0)};`));
    const element = fc.letrec<{ element: string }>((tie) => ({
      element: fc
        .tuple(fc.constantFrom('a', 'p:b', 'c'), text, fc.array(fc.oneof(text, tie('element')), { maxLength: 4 }))
        .map(([name, value, inside]) => `<${name} t="${value}" xml:space="preserve">${inside.join('')}</${name}>`),
    })).element;
    fc.assert(
      fc.property(element, (inside) => {
        const whole = `<root xmlns:p="q">${inside}</root>`;
        const other = new DOMParser().parseFromString(whole, 'text/xml').documentElement as unknown as XmlElement;
        expect(shape(root(whole))).toEqual(shape(other));
      }),
      cases(100),
    );
  });
});
