import type { Book } from '../xlsx/book.js';
import { meaningOf, placeOnSheet } from '../xlsx/names.js';

interface SavedName {
  readonly id: string;
  readonly name: string;
  readonly formulaOrRefString: string;
  readonly localSheetId?: string;
}

/** How the engine says that a name is known on all sheets. */
const EVERYWHERE = 'AllDefaultWorkbook';

/** The names of a workbook as the engine saves them. `ids` has those of the sheets, in their order. */
export function savedNames({ sheets, values, scopes = {} }: Book, ids: readonly string[]): Record<string, SavedName> {
  const places = sheets.flatMap(({ name: sheet, names }) =>
    Object.entries(names).map(([name, range]) => [name, placeOnSheet(sheet, range)] as const),
  );
  return Object.fromEntries(
    [...places, ...Object.entries(values ?? {})].map(([name, formulaOrRefString], number) => {
      const id = `name-${number}`;
      const localSheetId = ids[sheets.findIndex((one) => one.name === scopes[name])] ?? EVERYWHERE;
      return [id, { id, name, formulaOrRefString, localSheetId }];
    }),
  );
}

interface ReadNames extends Pick<Book, 'values' | 'scopes'> {
  /** By the sheets' names: name → address. */
  readonly ofSheet: ReadonlyMap<string, Readonly<Record<string, string>>>;
}

/** The same as a book has them. `sheets` leads from the engine's ids to names. */
export function namesOfSaved(saved: readonly SavedName[], sheets: ReadonlyMap<string, string>): ReadNames {
  const ofSheet = new Map([...sheets.values()].map((name) => [name, {} as Record<string, string>]));
  const values: Record<string, string> = {};
  const scopes: Record<string, string> = {};
  for (const { name, formulaOrRefString, localSheetId = EVERYWHERE } of saved) {
    const meaning = meaningOf(formulaOrRefString);
    const place = meaning && 'sheet' in meaning ? ofSheet.get(meaning.sheet) : undefined;
    if (place && meaning && 'range' in meaning) place[name] = meaning.range;
    else values[name] = `=${formulaOrRefString.replace(/^=/, '')}`;
    const scope = sheets.get(localSheetId);
    if (scope !== undefined) scopes[name] = scope;
  }
  return { ofSheet, values, scopes };
}
