import { describe, expect, it, onTestFinished } from 'vitest';
import { dosing } from '../../src/sheets/dosing.js';
import { sheetData } from '../../taskpane/workbook/grid/workbookData.js';
import { openWorkbook } from './workbookPage.js';

async function open(options = {}) {
  const workbook = await openWorkbook({ viewport: { width: 1280, height: 900 }, ...options });
  onTestFinished(workbook.close);
  return workbook;
}
type Workbook = Awaited<ReturnType<typeof open>>;

const place = (name: string) => dosing.names[name] ?? '';

/** What the grid draws in a cell of its canvas: the most common colour, as far as a picture can tell. */
const ground = ({ page }: Workbook) =>
  page.evaluate(() => {
    const canvas = [...document.querySelectorAll('canvas')].sort((one, other) => other.width - one.width)[0];
    const image = canvas?.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data ?? [];
    let [refused, unusual] = [0, 0];
    for (let at = 0; at < image.length; at += 4) {
      const colour = `${image[at]},${image[at + 1]},${image[at + 2]}`;
      if (colour === '255,207,196') refused += 1;
      if (colour === '255,217,138') unusual += 1;
    }
    return { refused: refused > 500, unusual: unusual > 500 };
  });

/** Where a choice cell of column B shows its arrow, on a sheet that was not scrolled. */
async function arrowOf({ page }: Workbook, cell: string): Promise<[x: number, y: number]> {
  const canvas = await page.locator('canvas').evaluateAll((all) => {
    const [largest] = all.map((one) => one.getBoundingClientRect()).sort((one, other) => other.width - one.width);
    return { x: largest?.x ?? 0, y: largest?.y ?? 0 };
  });
  const { columnData = {} } = sheetData(dosing, 'any');
  const [first, second] = [columnData[0]?.w ?? 0, columnData[1]?.w ?? 0];
  const [rowHeader, columnHeader, row, inside] = [46, 20, 24, 17];
  return [
    canvas.x + rowHeader + first + second - inside,
    canvas.y + columnHeader + row * (Number(cell.slice(1)) - 0.5),
  ];
}

describe('a starter sheet in the embedded workbook', () => {
  it('changes the look of an input that is unusual or refused, and back', async () => {
    const workbook = await open();
    await expect.poll(() => ground(workbook)).toEqual({ refused: false, unusual: false });
    await workbook.enter(place('presentDose'), '-5');
    await expect.poll(() => ground(workbook)).toEqual({ refused: true, unusual: false });
    await workbook.enter(place('presentDose'), '60');
    await workbook.enter(place('feed'), '300');
    await expect.poll(() => ground(workbook)).toEqual({ refused: false, unusual: true });
    await workbook.enter(place('feed'), '90');
    await expect.poll(() => ground(workbook)).toEqual({ refused: false, unusual: false });
  });

  it('takes an entry that will be refused, and says so', async () => {
    const workbook = await open();
    await workbook.enter(place('presentDose'), '-5');
    expect(await workbook.notice()).toContain(
      `-5 is entered in ${place('presentDose')}, but it will be refused: Dose must be from 0`,
    );
    expect(await workbook.selected()).toContain('-5');
  });

  it('explains the selected input in the pane', async () => {
    const workbook = await open();
    await workbook.go(place('presentDose'));
    const [row, column] = [Number(place('presentDose').slice(1)) - 1, 1];
    await expect.poll(() => workbook.selected()).toContain(dosing.rows[row]?.[column]?.note ?? 'no note');
  });

  it('offers the kinds in a drop-down, and calculates with the one that is chosen', async () => {
    const workbook = await open();
    const { page } = workbook;
    await workbook.go(place('presentKind'));
    await page.mouse.click(...(await arrowOf(workbook, place('presentKind'))));
    const list = page.getByText('xerogel', { exact: true });
    await list.waitFor();
    await list.click();
    await workbook.go(place('presentKind'));
    await expect.poll(() => workbook.selected()).toContain('xerogel');
  });
});
