import type { Book, BookSheet } from './book.js';
import { type Package, packageOf, type Relation, related, workbookPart } from './parts.js';
import { printNames } from './printed.js';
import type { Shared } from './readCells.js';
import { coloursOf } from './readColours.js';
import type { Knows, OpenWords, Reading } from './reading.js';
import { leftOutWords } from './readLeftOut.js';
import { namesOf } from './readNames.js';
import { sheetOf } from './readSheet.js';
import { sheetList } from './readSheetList.js';
import { conditionColours, shownOf } from './readStyles.js';
import { richTexts, sharedTexts } from './readTexts.js';
import { attribute, childOf, isTrue, type ParseXml, whole, type XmlElement } from './readXml.js';
import { openZip } from './readZip.js';
import { Refusal } from './refusal.js';

export type ReadBook =
  | { readonly book: Book; readonly leftOut: readonly string[] }
  /** Why the file was not opened. */
  | { readonly refusal: string };

/** Days from the first day of the older count to the first of the newer. */
const DAYS_TO_1904 = 1462;

/** A workbook shows one sheet at least; in a file the only one that it shows can be of a kind that is not taken. */
function oneShown(sheets: readonly BookSheet[], { leftOut }: Reading): readonly BookSheet[] {
  const [first, ...others] = sheets;
  if (!first || sheets.some(({ hidden }) => !hidden)) return sheets;
  leftOut.add('hiddenSheets');
  const { hidden: _, ...shown } = first;
  return [shown, ...others];
}

function sheetsOf(all: Package, workbook: XmlElement, relations: readonly Relation[], reading: Reading) {
  const styles = related(all, relations, 'styles');
  const colours = coloursOf(related(all, relations, 'theme'));
  const from1904 = isTrue(attribute(childOf(workbook, 'workbookPr'), 'date1904'));
  if (from1904) reading.leftOut.add('dates1904');
  const texts = related(all, relations, 'sharedStrings');
  const shared: Shared = {
    texts: sharedTexts(texts),
    rich: richTexts(texts),
    shown: shownOf(styles, colours),
    days: from1904 ? DAYS_TO_1904 : 0,
  };
  const judged = conditionColours(styles, colours);
  const listed = sheetList(workbook, relations, reading);
  const names = namesOf(
    workbook,
    listed.map(({ stated }) => stated),
    reading,
  );
  const printed = printNames(workbook);
  const first = whole(attribute(childOf(workbook, 'bookViews', 'workbookView'), 'activeTab')) ?? 0;
  let active: string | undefined;
  const sheets = listed.flatMap(({ name, stated, part, place, hidden }): BookSheet[] => {
    const root = all.root(part);
    if (!root) reading.leftOut.add('brokenSheets');
    const own = names.ofSheet.get(stated.toLowerCase()) ?? {};
    if (!root) return [];
    if (place === first) active = name;
    const given = { all, part, root, name, hidden, printed: printed.get(place), colours, judged };
    return [sheetOf(given, shared, own, reading)];
  });
  const { values, scopes, kept } = names;
  const given = (record: Readonly<Record<string, unknown>>) => Object.keys(record).length > 0;
  return {
    sheets: oneShown(sheets, reading),
    ...(active === undefined ? {} : { active }),
    ...(given(values) ? { values } : {}),
    ...(given(scopes) ? { scopes } : {}),
    ...(kept.length > 0 ? { keptNames: kept } : {}),
  };
}

function read(bytes: Uint8Array, reading: Reading): ReadBook {
  const all = packageOf(openZip(bytes, reading.words), reading);
  const part = workbookPart(all, reading);
  const workbook = all.root(part);
  if (!workbook) throw new Refusal(reading.words.noWorkbook);
  const found = sheetsOf(all, workbook, all.relations(part), reading);
  const { sheets } = found;
  if (sheets.length === 0) throw new Refusal(reading.words.noSheets);
  return { book: found, leftOut: leftOutWords(all.names, reading) };
}

/**
 * The workbook in an .xlsx file. Whatever the bytes are, it answers with a workbook or a sentence.
 * @param knows whether the grid calculates a native function; without it every one is taken for known.
 */
export function readBook(bytes: Uint8Array, parse: ParseXml, words: OpenWords, knows: Knows = () => true): ReadBook {
  const taken = { cells: 0, characters: 0, ruled: 0, judged: 0 };
  try {
    return read(bytes, {
      words,
      parse,
      knows,
      leftOut: new Set(),
      drawn: new Set(),
      names: new Map(),
      ranges: new Map(),
      taken,
    });
  } catch (cause) {
    return { refusal: cause instanceof Refusal ? cause.message : words.damaged };
  }
}
