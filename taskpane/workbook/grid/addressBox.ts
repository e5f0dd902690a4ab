import { LIMITS } from '../xlsx/limits.js';
import { rectangleOf } from '../xlsx/readPlaces.js';
import type { Grid } from './boot.js';
import { workbookOf } from './place.js';
import { reveal } from './reveal.js';
import { canReach, growTo } from './room.js';

/** Whole columns and rows, which end where the sheet does, have letters or numbers alone. */
const isOfCells = (typed: string): boolean => /\d/.test(typed) && /\p{L}/u.test(typed);

/** Lets a sheet grow to an address that is typed into the engine's field, which breaks off over one beyond the end. */
export function growToTypedAddress(
  grid: Grid,
  container: HTMLElement,
  tooFar: (rows: string, columns: string) => void,
) {
  const typed = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' || !(event.target instanceof HTMLInputElement)) return;
    const address = event.target.value.trim();
    const place = isOfCells(address) ? rectangleOf(address) : undefined;
    if (!place) return;
    const extent = { rows: place.bottom + 1, columns: place.right + 1 };
    if (canReach(extent)) {
      const sheet = workbookOf(grid).getActiveSheet();
      growTo(sheet, extent);
      // After the engine has gone there, which may leave it under what is frozen.
      setTimeout(() => reveal(sheet, place.top, place.left));
      return;
    }
    event.preventDefault();
    event.stopImmediatePropagation();
    tooFar(String(LIMITS.rows), String(LIMITS.columns));
  };
  container.addEventListener('keydown', typed, { capture: true });
}
