import { ErrorType, ErrorValueObject, NumberValueObject } from '../../engine/formula.js';
import { numberIn, singly } from './singly.js';

/** A text with `*`, `?` and `~` before them as a pattern; nothing where it has none of them. */
function patternOf(text: string): RegExp | undefined {
  if (!/[*?~]/.test(text)) return undefined;
  const parts = text.match(/~[*?~]|./gsu) ?? [];
  const written = parts.map((part) => {
    if (part === '*') return '.*?';
    if (part === '?') return '.';
    return (part.length > 1 && part.startsWith('~') ? part.slice(1) : part).replace(/[\\^$.*+?()[\]{}|/-]/g, '\\$&');
  });
  return new RegExp(written.join(''), 'gis');
}

/**
 * SEARCH.
 * What: `=SEARCH("m*n","margin")`, `=SEARCH("?b","aab")`. Expected: 1, 2 (ECMA-376 part 1, 18.17.7.287). Got: #VALUE!.
 */
export const Search = singly('SEARCH', (usual, find, within, start) => {
  const bare = usual();
  const pattern = find && !find.isNull() ? patternOf(String(find.getValue())) : undefined;
  const from = Math.floor(numberIn(start) ?? 1);
  const text = String(within?.getValue() ?? '');
  if (!pattern || from < 1 || from > text.length) return bare;
  pattern.lastIndex = from - 1;
  const found = pattern.exec(text);
  return found ? NumberValueObject.create(found.index + 1) : ErrorValueObject.create(ErrorType.VALUE);
});
