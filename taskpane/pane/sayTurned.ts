import { rangeText } from '../host/address.js';
import type { Turned } from '../host/host.js';
import type { Setting } from './setting.js';

/** What became of texts that looked like numbers, in sentences. */
export function sayTurned({ place, count, left, shownBy }: Turned, { texts, formats }: Setting): string {
  const words = texts.textNumbers;
  return [
    words.turned(formats.count(count), rangeText(place)),
    shownBy === undefined ? '' : words.shownBy(shownBy),
    left > 0 ? words.left(formats.count(left)) : '',
  ]
    .filter(Boolean)
    .join(' ');
}
