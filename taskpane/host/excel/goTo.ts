import type { Reference } from '../reference.js';
import { Refusal } from '../refusal.js';
import { rangesOf } from './read.js';

/** Shows the sheet of a place and selects it. */
export const goTo = (reference: Reference): Promise<void> =>
  Excel.run(async (context) => {
    const [range] = await rangesOf(context, [reference]);
    range?.load(['isNullObject']);
    await context.sync();
    if (!range || range.isNullObject) throw new Refusal(({ gone }) => gone);
    range.worksheet.activate();
    range.select();
    await context.sync();
  });
