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

/** Whether other programs do not know a formula: it calls a function of ours, or reads all that such a one fills. */
const isOurs = (formula: string): boolean =>
  tokensOf(formula).some(
    ({ type, value }) => (type === 'func' && (idOf(value) || /ANCHORARRAY$/i.test(value))) || value === '#',
  );

/** A cell with the answer in the place of its formula. What the answer fills besides is in cells of its own. */
const answered = ({ formula: _, spill: __, fixed: ___, kept: ____, ...cell }: BookCell): BookCell => cell;

const eachCell = (sheet: BookSheet, change: (cell: BookCell) => BookCell): BookSheet => ({
  ...sheet,
  rows: sheet.rows.map((row) => row?.map((cell) => cell && change(cell))),
});

const replaced = (goes: (formula: string) => boolean) => (cell: BookCell) =>
  [cell.formula, cell.kept].some((formula) => formula !== undefined && goes(formula)) ? answered(cell) : cell;

/** The workbook for programs without the add-in: answers in the place of our formulas; all others stay formulas. */
export const asValues = (book: Book): Book => ({
  ...book,
  sheets: book.sheets.map((sheet) => eachCell(sheet, replaced(isOurs))),
});

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
