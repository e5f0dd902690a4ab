import type { Book, KeptName } from './book.js';
import { placeOnSheet, readsOnly } from './names.js';
import { formulaInFile } from './writeFormula.js';
import { element, escaped } from './writeXml.js';

/** The names of a workbook as its part defines them. */
export function namesInFile({ sheets, values = {}, scopes = {}, keptNames = [] }: Book): string[] {
  const names = sheets.map(({ name }) => name);
  const places = sheets.flatMap((sheet): KeptName[] =>
    Object.entries(sheet.names).map(([name, range]) => ({ name, text: placeOnSheet(sheet.name, range) })),
  );
  const formulas = Object.entries(values).map(([name, value]): KeptName => ({ name, text: formulaInFile(value) }));
  const used = [...places, ...formulas].map((one): KeptName => {
    const scope = scopes[one.name];
    return scope === undefined ? one : { ...one, scope };
  });
  const kept = keptNames.filter(({ text }) => readsOnly(text, names));
  return [...used, ...kept].flatMap(({ name, text, scope, hidden }) => {
    const localSheetId = scope === undefined ? undefined : names.indexOf(scope);
    // A name of a sheet that is gone went with it.
    if (localSheetId === -1) return [];
    return [element('definedName', { name, localSheetId, hidden: hidden ? 1 : undefined }, escaped(text))];
  });
}
