import { ErrorType, ErrorValueObject, NumberValueObject, StringValueObject } from '../../engine/formula.js';
import { numberIn, singly } from './singly.js';

const FIRST = 128;
/** The characters from 128 on of the usual code of one byte (WHATWG Encoding, index windows-1252); others are Unicode's own. */
const OWN = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';
const CHARACTERS = Array.from({ length: 256 }, (_, code) => OWN[code - FIRST] ?? String.fromCharCode(code));
const UNKNOWN = '?'.charCodeAt(0);

/**
 * CHAR.
 * What: `=CHAR(256)`, `=CHAR(128)`, `=CHAR(7)`. Expected: #VALUE!, as codes end at 255; €; the sign of that code (ECMA-376
 * part 1, 18.17.7.37; OpenFormula 1.2, 6.20.3; LibreOffice 7.4). Got: Ā; a sign that is none; that of code 1.
 */
export const Char = singly('CHAR', (usual, given) => {
  const bare = usual();
  const code = Math.floor(numberIn(given) ?? 0);
  if (bare.isError() || code < 1) return bare;
  const character = CHARACTERS[code];
  return character === undefined ? ErrorValueObject.create(ErrorType.VALUE) : StringValueObject.create(character);
});

/**
 * CODE.
 * What: `=CODE("€")`. Expected: 128, so that CHAR leads back (OpenFormula 1.2, 6.20.5; LibreOffice 7.4). Got: 8364.
 */
export const Code = singly('CODE', (usual) => {
  const bare = usual();
  if (bare.isError()) return bare;
  const place = CHARACTERS.indexOf(String.fromCharCode(Number(bare.getValue())));
  return NumberValueObject.create(place < 0 ? UNKNOWN : place);
});
