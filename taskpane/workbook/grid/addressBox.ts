import { LIMITS } from '../xlsx/limits.js';
import { rectangleOf } from '../xlsx/readPlaces.js';
import type { Grid } from './boot.js';
import { workbookOf } from './place.js';
import { canReach, growTo } from './room.js';

/** Lets a sheet grow to an address that is typed into the engine's field, which breaks off over one beyond the end. */
export function growToTypedAddress(
  grid: Grid,
  container: HTMLElement,
  tooFar: (rows: number, columns: number) => void,
) {
  const typed = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' || !(event.target instanceof HTMLInputElement)) return;
    const place = rectangleOf(event.target.value.trim());
    if (!place) return;
    // Whole columns and rows end where the sheet does.
    const [rows, columns] = [place.bottom, place.right].map((last) => last + 1) as [number, number];
    const whole = !/\d/.test(event.target.value) || !/\p{L}/u.test(event.target.value);
    if (whole) return;
    if (canReach({ rows, columns })) return growTo(workbookOf(grid).getActiveSheet(), { rows, columns });
    event.preventDefault();
    event.stopImmediatePropagation();
    tooFar(LIMITS.rows, LIMITS.columns);
  };
  container.addEventListener('keydown', typed, { capture: true });
}
