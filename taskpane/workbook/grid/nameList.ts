import { IDefinedNamesService } from '../engine/formula.js';
import { servicesOf } from '../engine/services.js';
import type { Grid } from './boot.js';

/** Closes the engine's list of names once one is chosen, which it leaves open over the cells it leads to. */
export function closeNameListOnChoice(grid: Grid, focus: () => void): void {
  const names = servicesOf(grid.univer).get(IDefinedNamesService);
  names.focusRange$.subscribe(() => {
    document.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true }));
    // After the list has handed the focus back to its opener.
    setTimeout(focus, 50);
  });
}
