export const ENCODINGS = ['utf-8', 'utf-16le', 'utf-16be', 'windows-1252'] as const;
export type Encoding = (typeof ENCODINGS)[number];

/** As much of a file as shows how its letters are written. */
const SAMPLE = 4096;
/** In a text of Latin letters every other byte is nought where a letter has two. */
const EVERY_OTHER = 0.3;

/** By the mark in front, or by where the noughts stand; undefined where neither says anything. */
function wideEncoding(bytes: Uint8Array): Encoding | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  const sample = bytes.subarray(0, SAMPLE);
  const noughts = [0, 0];
  for (const [at, byte] of sample.entries()) if (byte === 0) noughts[at % 2] = (noughts[at % 2] ?? 0) + 1;
  const [even = 0, odd = 0] = noughts.map((count) => (2 * count) / sample.length);
  if (odd > EVERY_OTHER && even < EVERY_OTHER / 10) return 'utf-16le';
  return even > EVERY_OTHER && odd < EVERY_OTHER / 10 ? 'utf-16be' : undefined;
}

export interface Decoded {
  readonly text: string;
  readonly encoding: Encoding;
}

/**
 * The text in a file, its letters written as `encoding` says or, where it says nothing, as the bytes show. What is no
 * UTF is taken for Windows-1252, the letters of Western Europe. Undefined for what is no text.
 */
export function decode(bytes: Uint8Array, encoding?: Encoding): Decoded | undefined {
  const wide = encoding ?? wideEncoding(bytes);
  if (wide) return { text: new TextDecoder(wide).decode(bytes), encoding: wide };
  if (bytes.includes(0)) return undefined;
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), encoding: 'utf-8' };
  } catch {
    return { text: new TextDecoder('windows-1252').decode(bytes), encoding: 'windows-1252' };
  }
}
