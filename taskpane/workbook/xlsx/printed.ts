import { LIMITS } from './limits.js';
import { placeOnSheet } from './names.js';
import type { PageSetup } from './pageSetup.js';
import type { LeftOut } from './reading.js';
import { rectangleOf } from './readPlaces.js';
import { attribute, childOf, childrenOf, whole, type XmlElement } from './readXml.js';

const [AREA, TITLES] = ['_xlnm.Print_Area', '_xlnm.Print_Titles'];
/** Whole rows, and whole columns. */
export const ROWS = /^\d+:\d+$/;
export const COLUMNS = /^[A-Z]+:[A-Z]+$/;

/** What a file says of a sheet's print by names: the places that are printed, and those that are repeated. */
export interface Printed {
  areas?: readonly string[];
  titles?: readonly string[];
}

/** The places of a list on one sheet; commas in the sheet's name part nothing. */
const placesIn = (text: string): string[] =>
  (text.match(/(?:'(?:[^']|'')*'|[^',])+/g) ?? []).map((one) =>
    one.slice(one.lastIndexOf('!') + 1).replaceAll('$', ''),
  );

/** The same for all sheets, by their places in the list of sheets. */
export function printNames(workbook: XmlElement): ReadonlyMap<number, Printed> {
  const printed = new Map<number, Printed>();
  for (const one of childrenOf(childOf(workbook, 'definedNames'), 'definedName')) {
    const name = attribute(one, 'name');
    if (name !== AREA && name !== TITLES) continue;
    const place = whole(attribute(one, 'localSheetId')) ?? -1;
    const found = printed.get(place) ?? {};
    found[name === AREA ? 'areas' : 'titles'] = placesIn(one.textContent ?? '');
    printed.set(place, found);
  }
  return printed;
}

/** What is printed of a sheet and what is repeated, as far as it moves with the cells. */
export function printedOf({ areas = [], titles = [] }: Printed, leftOut: Set<LeftOut>): PageSetup {
  const [rows, columns] = [ROWS, COLUMNS].map((form) => titles.find((one) => form.test(one) && fits(one)));
  const follow = areas.filter(fits);
  if (follow.length < areas.length || titles.length > [rows, columns].filter(Boolean).length) leftOut.add('printAreas');
  return {
    ...(follow.length > 0 ? { areas: follow } : {}),
    ...(rows ? { rows } : {}),
    ...(columns ? { columns } : {}),
  };
}

/** Whether a place is among those that the grid has; whole rows and columns end where a sheet does. */
function fits(place: string): boolean {
  const { bottom, right } = rectangleOf(place) ?? { bottom: LIMITS.rows, right: LIMITS.columns };
  return (COLUMNS.test(place) || bottom < LIMITS.rows) && (ROWS.test(place) || right < LIMITS.columns);
}

/** The names by which a file says it. */
export function printedInFile(sheet: string, { areas = [], rows, columns }: PageSetup): [string, string][] {
  const listed = (places: readonly (string | undefined)[]) =>
    places.flatMap((one) => (one ? [placeOnSheet(sheet, one)] : [])).join(',');
  return [
    [AREA as string, listed(areas)],
    [TITLES as string, listed([columns, rows])],
  ].filter((one): one is [string, string] => one[1] !== '');
}
