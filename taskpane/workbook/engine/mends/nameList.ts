import type { Univer } from '../core.js';
import { IDefinedNamesService } from '../formula.js';
import { servicesOf } from '../services.js';

/** Closes the engine's list of names once one is chosen, which it leaves open over the cells it leads to. */
export function closeNameListOnChoice(univer: Univer, focus: () => void): void {
  const names = servicesOf(univer).get(IDefinedNamesService);
  names.focusRange$.subscribe(() => {
    document.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true }));
    // After the list has handed the focus back to its opener.
    setTimeout(focus, 50);
  });
}
