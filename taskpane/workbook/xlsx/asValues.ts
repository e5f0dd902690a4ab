import { tokenize } from '@borgar/fx/xlsx';
import { idOf } from '../../formula/ids.js';
import type { Book, BookCell, BookSheet } from './book.js';

const tokensOf = (formula: string) => {
  try {
    return tokenize(formula.replace(/^=/, ''));
  } catch {
    return [];
  }
};

type Names = ReadonlySet<string>;

/** A name without the sheet before it, in small letters. */
const plainName = (value: string): string => value.slice(value.lastIndexOf('!') + 1).toLowerCase();

/**
 * Whether other programs do not know a formula: it calls a function of ours, or reads all that such a one fills, or a name
 * that does.
 */
const isOurs =
  (names: Names) =>
  (formula: string): boolean =>
    tokensOf(formula).some(
      ({ type, value }) =>
        (type === 'func' && (idOf(value) || /ANCHORARRAY$/i.test(value))) ||
        (type === 'range_named' && names.has(plainName(value))) ||
        value === '#',
    );

/** Names that stand for a calculation with our functions, directly or through other names, in small letters. */
function ourNames({ values = {}, keptNames = [] }: Book): Names {
  const all = [...Object.entries(values), ...keptNames.map(({ name, text }) => [name, text] as const)];
  const found = new Set<string>();
  for (let before = -1; before < found.size; ) {
    before = found.size;
    for (const [name, text] of all) if (isOurs(found)(text)) found.add(name.toLowerCase());
  }
  return found;
}

/** A cell with the answer in the place of its formula. What the answer fills besides is in cells of its own. */
const answered = ({ formula: _, spill: __, fixed: ___, kept: ____, ...cell }: BookCell): BookCell => cell;

const eachCell = (sheet: BookSheet, change: (cell: BookCell) => BookCell): BookSheet => ({
  ...sheet,
  rows: sheet.rows.map((row) => row?.map((cell) => cell && change(cell))),
});

const replaced = (goes: (formula: string) => boolean) => (cell: BookCell) =>
  [cell.formula, cell.kept].some((formula) => formula !== undefined && goes(formula)) ? answered(cell) : cell;

/** The workbook for programs without the add-in: answers in the place of our formulas; all others stay formulas. */
export function asValues(book: Book): Book {
  const names = ourNames(book);
  const { values, keptNames } = book;
  const stays = (name: string) => !names.has(name.toLowerCase());
  return {
    ...book,
    sheets: book.sheets.map((sheet) => eachCell(sheet, replaced(isOurs(names)))),
    // What such a name stands for has no place in a file but in the cells that read it.
    ...(values ? { values: Object.fromEntries(Object.entries(values).filter(([name]) => stays(name))) } : {}),
    ...(keptNames ? { keptNames: keptNames.filter(({ name }) => stays(name)) } : {}),
  };
}

/** One sheet of it alone. What reads other sheets, or a name that is not on this one, becomes its answer too. */
export function sheetAsValues(book: Book, name: string): Book {
  const own = name.toLowerCase();
  const away = (formula: string, names: BookSheet['names']): boolean => {
    const known = new Set([...Object.keys(names), ...Object.keys(book.values ?? {})].map((one) => one.toLowerCase()));
    return tokensOf(formula).some(({ type, value }) => {
      if (!value.includes('!'))
        return type === 'structured' || (type === 'range_named' && !known.has(value.toLowerCase()));
      if (!type.startsWith('range')) return false;
      const sheet = value
        .slice(0, value.lastIndexOf('!'))
        .replace(/^'(.*)'$/, '$1')
        .replaceAll("''", "'");
      return sheet.toLowerCase() !== own;
    });
  };
  const { active: _, ...rest } = book;
  return {
    ...rest,
    sheets: asValues(book)
      .sheets.filter((sheet) => sheet.name === name)
      .map((sheet) =>
        eachCell(
          sheet,
          replaced((formula) => away(formula, sheet.names)),
        ),
      ),
  };
}
