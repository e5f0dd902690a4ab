import { strFromU8, unzlibSync } from 'fflate';

type Matrix = readonly [number, number, number, number, number, number];
const PLAIN: Matrix = [1, 0, 0, 1, 0, 0];

const times = ([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix => [
  a * g + b * i,
  a * h + b * j,
  c * g + d * i,
  c * h + d * j,
  e * g + f * i + k,
  e * h + f * j + l,
];

/** How much a matrix makes letters higher. */
const heightens = ([, , c, d]: Matrix): number => Math.hypot(c, d);

/** The streams of a PDF that are compressed in the usual way, as text. */
function* streamsOf(file: string): Generator<string> {
  for (const { index = 0, 0: begin } of file.matchAll(/stream\r?\n/g)) {
    const bytes = Uint8Array.from(file.slice(index + begin.length), (one) => one.charCodeAt(0));
    try {
      yield strFromU8(unzlibSync(bytes), true);
    } catch {
      // No compressed stream begins here.
    }
  }
}

/** The heights of the letters that one stream shows, in points. */
function heightsIn(stream: string): number[] {
  const heights: number[] = [];
  const kept: Matrix[] = [];
  let [page, text, size] = [PLAIN, PLAIN, 0];
  let given: number[] = [];
  for (const [token] of stream.matchAll(/\((?:\\.|[^\\)])*\)|<[0-9a-fA-F\s]*>|[^\s()<>[\]]+/g)) {
    const matrix = () => given.slice(-6) as unknown as Matrix;
    if (token === 'q') kept.push(page);
    else if (token === 'Q') page = kept.pop() ?? PLAIN;
    else if (token === 'cm') page = times(matrix(), page);
    else if (token === 'BT') text = PLAIN;
    else if (token === 'Tm') text = matrix();
    else if (token === 'Tf') size = given.at(-1) ?? 0;
    else if (token === 'Tj' || token === 'TJ') heights.push(size * heightens(times(text, page)));
    const number = Number(token);
    given = Number.isFinite(number) ? [...given, number] : /^[/(<]/.test(token) ? given : [];
  }
  return heights;
}

/** The heights of all letters of a PDF in points, and on how many pages they stand. */
export function lettersIn(bytes: Uint8Array): { readonly heights: readonly number[]; readonly pages: number } {
  const file = strFromU8(bytes, true);
  return {
    heights: [...streamsOf(file)].filter((stream) => /\bTj|\bTJ/.test(stream)).flatMap(heightsIn),
    pages: [...file.matchAll(/\/Type\s*\/Page\b/g)].length,
  };
}
