import {
  type ICellData,
  type IObjectMatrixPrimitiveType,
  IUniverInstanceService,
  type Workbook,
} from '../engine/core.js';
import { servicesOf } from '../engine/services.js';
import { SetRangeValuesMutation } from '../engine/sheets.js';
import { ISheetClipboardService } from '../engine/sheetsUi.js';
import type { Grid } from './boot.js';
import { noteOf } from './notes.js';

const CUT = 'CUT';
const NOTHING = { redos: [], undos: [] };

/** A copied cell takes its note along; the engine copies contents and looks alone. What is cut is moved as a whole. */
export function copyNotes(grid: Grid): void {
  const injector = servicesOf(grid.univer);
  const sheetOf = (unitId: string, subUnitId: string) =>
    injector.get(IUniverInstanceService).getUnit<Workbook>(unitId)?.getSheetBySheetId(subUnitId);
  injector.get(ISheetClipboardService).addClipboardHook({
    id: 'powderbook-notes',
    onPasteCells(from, to, _, { copyType }) {
      const [source, target] = [from && sheetOf(from.unitId, from.subUnitId), sheetOf(to.unitId, to.subUnitId)];
      if (!from || !source || !target || String(copyType) === CUT) return NOTHING;
      const after: IObjectMatrixPrimitiveType<ICellData> = {};
      const before: IObjectMatrixPrimitiveType<ICellData> = {};
      const put = (matrix: typeof after, row: number, column: number, custom: ICellData['custom']) => {
        matrix[row] = { ...matrix[row], [column]: { custom: custom ?? null } };
      };
      const { rows, cols } = from.range;
      for (const [r, row] of to.range.rows.entries())
        for (const [c, column] of to.range.cols.entries()) {
          const remark = noteOf(source.getCellRaw(rows[r % rows.length] as number, cols[c % cols.length] as number));
          if (remark === undefined) continue;
          const custom = target.getCellRaw(row, column)?.custom;
          put(after, row, column, { ...custom, remark });
          put(before, row, column, custom);
        }
      if (Object.keys(after).length === 0) return NOTHING;
      const made = (cellValue: typeof after) => [
        { id: SetRangeValuesMutation.id, params: { unitId: to.unitId, subUnitId: to.subUnitId, cellValue } },
      ];
      return { redos: made(after), undos: made(before) };
    },
  });
}
