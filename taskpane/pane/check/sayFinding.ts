import type { Unit } from '../../../src/core/units.js';
import { placeText } from '../../host/address.js';
import type { Setting } from '../setting.js';
import type { Finding } from './finding.js';

/** What is the matter, in a sentence; one of the library stays English. */
export function sayFinding(
  { kind, place, subject, sentence, figures }: Finding,
  { texts, formats }: Setting,
): { readonly text: string; readonly english: boolean } {
  const own = (text: string) => ({ text, english: false });
  const amount = (value: number) => formats.amount(value, (figures?.unit ?? '') as Unit);
  if (kind === 'dose' && figures?.places[0]) {
    const other = placeText(figures.places[0], place.sheet);
    return own(texts.check.dose(amount(figures.value), amount(figures.other ?? 0), other));
  }
  if (kind === 'constant' && figures) {
    return own(texts.check.constant(amount(figures.value), formats.count(figures.places.length + 1)));
  }
  if (kind === 'text' && figures) return own(texts.check.text(formats.count(figures.value)));
  if (sentence) return { text: sentence, english: true };
  const meaning = Object.entries(texts.help.error).find(([error]) => error === subject)?.[1];
  return own(meaning ?? subject);
}
