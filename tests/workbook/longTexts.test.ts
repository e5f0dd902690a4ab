import fc from 'fast-check';
import { afterEach, expect, it } from 'vitest';
import { cases } from '../../.config/properties.js';
import { bareSegment, mendLongTexts } from '../../taskpane/workbook/engine/mends/longTexts.js';

afterEach(() => {
  Intl.Segmenter.prototype.segment = bareSegment;
});

const letters = new Intl.Segmenter('en', { granularity: 'grapheme' });
const listed = (text: string) => [...letters.segment(text)].map(({ segment, index }) => [segment, index]);

it('a long text has the same letters when it is gone through in pieces', () => {
  const piece = fc.constantFrom('a', 'e\u0301', '👩‍👩‍👧', '🇩🇪', '🇫', '\r\n', 'नि', '가', '\u0301'.repeat(400), ' ');
  fc.assert(
    fc.property(fc.array(piece, { minLength: 600, maxLength: 1500 }), (pieces) => {
      const text = pieces.join('');
      mendLongTexts();
      const inPieces = listed(text);
      Intl.Segmenter.prototype.segment = bareSegment;
      expect(inPieces).toEqual(listed(text));
    }),
    cases(10),
  );
});

it('no more of a long text is looked at than is asked for, as the browser still does: longTexts.ts', () => {
  mendLongTexts();
  const text = 'a'.repeat(30_000);
  const started = performance.now();
  for (let at = 0; at < text.length; at += 1) letters.segment(text.slice(at))[Symbol.iterator]().next();
  const mended = performance.now() - started;
  Intl.Segmenter.prototype.segment = bareSegment;
  const startedBare = performance.now();
  for (let at = 0; at < text.length; at += 10) letters.segment(text.slice(at))[Symbol.iterator]().next();
  expect(mended).toBeLessThan(10 * (performance.now() - startedBare));
  expect(letters.segment('ab').containing(1)?.segment).toBe('b');
});
