import type { Grid } from './boot.js';
import { workbookOf } from './place.js';

/** Enters what is being typed, and from then on lets nothing be changed. */
export async function makeReadOnly(grid: Grid): Promise<void> {
  await workbookOf(grid).endEditingAsync(true);
  workbookOf(grid).setEditable(false);
}
