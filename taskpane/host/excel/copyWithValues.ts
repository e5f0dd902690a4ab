import { Refusal } from '../refusal.js';
import { copyName } from '../sheetName.js';
import { takeAway } from './insertSheet.js';
import { readRows, usedRanges } from './readAll.js';

const BUSY = '#BUSY!';

/** A copy of the shown sheet beside it, with the values that its formulas show. A copy left half made is taken away. */
export async function copyWithValues(ending: string): Promise<{ readonly name: string }> {
  let made = '';
  try {
    await Excel.run(async (context) => {
      const { worksheets } = context.workbook;
      const source = worksheets.getActiveWorksheet();
      source.load('name');
      worksheets.load('items/name');
      await context.sync();
      const [used] = await usedRanges(context, [source]);
      const { values } = used ? await readRows(context, used, () => {}) : { values: [] };
      if (values.some((line) => line.includes(BUSY))) {
        throw new Refusal(({ busy }) => busy);
      }
      const name = copyName(
        source.name,
        ending,
        worksheets.items.map((one) => one.name),
      );
      const copy = source.copy('After', source);
      copy.name = name;
      await context.sync();
      made = name;
      if (used && used.rows > 0) {
        const { row, column, rows, columns } = used;
        const from = source.getRangeByIndexes(row, column, rows, columns);
        copy.getRangeByIndexes(row, column, rows, columns).copyFrom(from, 'Values');
      }
      copy.activate();
      await context.sync();
    });
  } catch (error) {
    if (made) await takeAway(made);
    throw error;
  }
  return { name: made };
}
