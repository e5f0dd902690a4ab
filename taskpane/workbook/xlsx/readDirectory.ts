import { LIMITS } from './limits.js';
import type { OpenWords } from './reading.js';
import { Refusal } from './refusal.js';

/** One part of a zip file as it lies there, still packed. */
export interface Entry {
  readonly name: string;
  /** 0 where it is not packed, 8 where it is deflated. */
  readonly method: number;
  readonly data: Uint8Array;
}

const END = 0x06054b50;
const END_LENGTH = 22;
const MOST_COMMENT = 0xffff;
const IN_DIRECTORY = 0x02014b50;
const BEFORE_DATA = 0x04034b50;
/** Stands where a size or place is given as a long number further on. */
const LONG = 0xffffffff;
const ENCRYPTED = 1;

/** The start of files of the 1990s kind, in which spreadsheet programs also wrap encrypted workbooks. */
const COMPOUND = 0xe011cfd0;

function endOf(view: DataView): number | undefined {
  const first = Math.max(0, view.byteLength - END_LENGTH - MOST_COMMENT);
  for (let at = view.byteLength - END_LENGTH; at >= first; at -= 1) if (view.getUint32(at, true) === END) return at;
  return undefined;
}

/** The long numbers that an entry may carry: only those whose short place is full, in this order. */
function longNumbers(view: DataView, from: number, to: number, short: readonly number[]): readonly number[] {
  for (let at = from; at + 4 <= to; at += 4 + view.getUint16(at + 2, true)) {
    if (view.getUint16(at, true) !== 1) continue;
    let next = at + 4;
    return short.map((one) => {
      if (one !== LONG) return one;
      next += 8;
      return Number(view.getBigUint64(next - 8, true));
    });
  }
  return short;
}

/** The parts by name in small letters. Sizes that the directory states are used only to cut the packed bytes out. */
export function directoryOf(bytes: Uint8Array, words: OpenWords): ReadonlyMap<string, Entry> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (view.byteLength >= 4 && view.getUint32(0, true) === COMPOUND) throw new Refusal(words.encrypted);
  const end = endOf(view);
  if (end === undefined) throw new Refusal(words.noZip);
  const count = view.getUint16(end + 10, true);
  if (count > LIMITS.entries) throw new Refusal(words.entries(count, LIMITS.entries));
  const entries = new Map<string, Entry>();
  let at = view.getUint32(end + 16, true);
  for (let number = 0; number < count; number += 1) {
    if (view.getUint32(at, true) !== IN_DIRECTORY) throw new Refusal(words.damaged);
    if (view.getUint16(at + 8, true) & ENCRYPTED) throw new Refusal(words.encrypted);
    const nameEnd = at + 46 + view.getUint16(at + 28, true);
    const extraEnd = nameEnd + view.getUint16(at + 30, true);
    const short = [view.getUint32(at + 24, true), view.getUint32(at + 20, true), view.getUint32(at + 42, true)];
    const [, packed = 0, place = 0] = longNumbers(view, nameEnd, extraEnd, short);
    if (view.getUint32(place, true) !== BEFORE_DATA) throw new Refusal(words.damaged);
    const start = place + 30 + view.getUint16(place + 26, true) + view.getUint16(place + 28, true);
    if (start + packed > bytes.length) throw new Refusal(words.damaged);
    const name = new TextDecoder()
      .decode(bytes.subarray(at + 46, nameEnd))
      .replaceAll('\\', '/')
      .replace(/^\/+/, '');
    const entry = { name, method: view.getUint16(at + 10, true), data: bytes.subarray(start, start + packed) };
    entries.set(name.toLowerCase(), entry);
    at = extraEnd + view.getUint16(at + 32, true);
  }
  return entries;
}
