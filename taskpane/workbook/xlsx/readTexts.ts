import { childrenOf, unescaped, type XmlElement } from './readXml.js';

/** A text with or without looks inside it, as plain text; readings of foreign script beside it are left aside. */
export function plainText(element: XmlElement | undefined): string {
  const pieces = childrenOf(element).flatMap((one) => {
    if (one.localName === 't') return [one];
    return one.localName === 'r' ? childrenOf(one, 't') : [];
  });
  return unescaped(pieces.map((one) => one.textContent ?? '').join(''));
}

/** The texts that cells name by number. */
export const sharedTexts = (root: XmlElement | undefined): readonly string[] => childrenOf(root, 'si').map(plainText);
