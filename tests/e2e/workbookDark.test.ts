import { afterEach, expect, it } from 'vitest';
import { contrasts } from './contrast.js';
import { openWorkbook } from './workbookPage.js';

let workbook: Awaited<ReturnType<typeof openWorkbook>> | undefined;
afterEach(() => workbook?.close());

/** WCAG 2.2, 1.4.3: letters of this size. */
const READABLE = 4.5;

it.each(['light', 'dark'] as const)(
  'formulas can be read in the formula bar, also of a cell that another fills: %s',
  async (scheme) => {
    workbook = await openWorkbook({ colorScheme: scheme });
    const { page, addSheet, enter, go } = workbook;
    await addSheet();
    await enter('E1', '=SEQUENCE(3)');
    await enter('C1', '=1111');
    const bar = page.locator('[data-u-comp="formula-bar"] canvas').first();
    /** The best that a pixel of the formula does; letters that are smoothed have few of their own colour. */
    const best = async (from: number, width: number) => {
      const box = await bar.boundingBox();
      const clip = { x: (box?.x ?? 0) + from, y: (box?.y ?? 0) + 3, width, height: 18 };
      return Math.max(...(await contrasts(page, clip)));
    };
    await expect.poll(() => best(0, 100)).toBeGreaterThan(READABLE);
    await go('E2');
    await expect.poll(() => best(0, 100)).toBeGreaterThan(READABLE);
    // Numbers have a colour of their own while a formula is edited; they begin behind the equals sign.
    await go('C1');
    await page.keyboard.press('F2');
    await expect.poll(() => best(10, 28)).toBeGreaterThan(READABLE);
    await page.keyboard.press('Escape');
  },
);
