import { Inflate } from 'fflate';
import { LIMITS, megabytes } from './limits.js';
import { directoryOf, type Entry } from './readDirectory.js';
import type { OpenWords } from './reading.js';
import { Refusal } from './refusal.js';

/** The parts of a file, unpacked one by one as they are asked for. */
export interface Parts {
  readonly names: readonly string[];
  read(name: string): Uint8Array | undefined;
}

/** A few bytes can stand for very many, so they are fed in slices and the outcome is counted after each. */
const SLICE = 16 * 1024;

function inflate(packed: Uint8Array, most: number, tooMuch: () => Refusal): Uint8Array {
  const pieces: Uint8Array[] = [];
  let size = 0;
  const stream = new Inflate((piece) => {
    size += piece.length;
    if (size > most) throw tooMuch();
    pieces.push(piece);
  });
  for (let at = 0; at < packed.length; at += SLICE) {
    stream.push(packed.subarray(at, at + SLICE), at + SLICE >= packed.length);
  }
  const whole = new Uint8Array(size);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}

export function openZip(bytes: Uint8Array, words: OpenWords): Parts {
  if (bytes.length === 0) throw new Refusal(words.empty);
  if (bytes.length > LIMITS.packed) throw new Refusal(words.packed(megabytes(bytes.length), megabytes(LIMITS.packed)));
  const entries = directoryOf(bytes, words);
  let left: number = LIMITS.unpacked;
  let packed = 0;
  const unpack = ({ name, method, data }: Entry): Uint8Array => {
    packed += data.length;
    // A small file that unpacks to very many empty elements keeps the page busy for a quarter of a minute.
    const dense = Math.max(LIMITS.loose, LIMITS.dense * packed) - (LIMITS.unpacked - left);
    const most = Math.min(left, LIMITS.part, dense);
    const tooMuch = () => {
      if (most === dense) return new Refusal(words.dense(LIMITS.dense));
      return left < LIMITS.part
        ? new Refusal(words.unpacked(megabytes(LIMITS.unpacked)))
        : new Refusal(words.part(name, megabytes(LIMITS.part)));
    };
    if (method !== 0 && method !== 8) throw new Refusal(words.damaged);
    if (method === 0 && data.length > most) throw tooMuch();
    const whole = method === 0 ? data : inflate(data, most, tooMuch);
    left -= whole.length;
    return whole;
  };
  return {
    names: [...entries.keys()],
    read(name) {
      const entry = entries.get(name.toLowerCase());
      return entry && unpack(entry);
    },
  };
}
