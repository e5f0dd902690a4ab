import { childrenOf, unescaped, type XmlElement } from './readXml.js';

/** A text with or without looks inside it, as plain text; readings of foreign script beside it are left aside. */
export function plainText(element: XmlElement | undefined): string {
  const pieces = childrenOf(element).flatMap((one) => {
    if (one.localName === 't') return [one];
    return one.localName === 'r' ? childrenOf(one, 't') : [];
  });
  return unescaped(pieces.map((one) => one.textContent ?? '').join(''));
}

/** Whether a text has several looks inside it. */
export const hasLooks = (element: XmlElement | undefined): boolean => childrenOf(element, 'r').length > 1;

/** The texts that cells name by number. */
export const sharedTexts = (root: XmlElement | undefined): readonly string[] => childrenOf(root, 'si').map(plainText);

/** The numbers of the texts that have several looks inside. */
export const richTexts = (root: XmlElement | undefined): ReadonlySet<number> =>
  new Set(childrenOf(root, 'si').flatMap((one, number) => (hasLooks(one) ? [number] : [])));
