/** Longer texts than this are gone through in pieces, which have so many letters at first. */
const LONG = 1024;
const PIECE = 32;

const segmenter = Intl.Segmenter.prototype;

/** The browser's own way. */
export const bareSegment = segmenter.segment;

/** Where a piece ends: no sign that is written by two is divided. */
const endOf = (text: string, place: number) => place + (/[\uD800-\uDBFF]/.test(text[place - 1] ?? '') ? 1 : 0);

/** The parts of a text one after another, as the browser finds them; no more of the text is looked at than is asked for. */
function* partsOf(own: Intl.Segmenter, text: string): Generator<Intl.SegmentData> {
  let at = 0;
  let size = PIECE;
  while (at < text.length) {
    const start = at;
    const end = endOf(text, start + size);
    let held: Intl.SegmentData | undefined;
    for (const part of bareSegment.call(own, text.slice(start, end))) {
      if (held) yield { ...held, index: start + held.index, input: text };
      at = start + part.index;
      held = part;
    }
    // The last part of a piece may go on in the next one.
    if (held && end >= text.length) {
      yield { ...held, index: at, input: text };
      return;
    }
    if (at === start) size *= 2;
  }
}

/**
 * Drawing a long text without blanks.
 * What: a text of 30,000 letters is shown in a cell. Expected: a time that grows with its length. Got: for each letter
 * all the text after it is divided into letters, of which the first is looked at: 10 seconds.
 */
export function mendLongTexts(): void {
  segmenter.segment = function (this: Intl.Segmenter, text: string) {
    if (text.length <= LONG) return bareSegment.call(this, text);
    return {
      containing: (place?: number) => bareSegment.call(this, text).containing(place),
      [Symbol.iterator]: () => partsOf(this, text),
    } as Intl.Segments;
  };
}
