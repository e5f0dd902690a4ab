import type { SheetChart } from '../../../src/sheets/sheet.js';
import {
  CommandType,
  ICommandService,
  type IMutation,
  IUndoRedoService,
  IUniverInstanceService,
  type Workbook,
} from '../engine/core.js';
import { servicesOf } from '../engine/services.js';
import type { Grid } from './boot.js';
import { chartsOf, setCharts } from './chartMarks.js';
import { workbookOf } from './place.js';

interface Params {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly charts: readonly SheetChart[];
}

export const SET_CHARTS = 'sheet.mutation.powderbook-set-charts';

const mutation: IMutation<Params> = {
  id: SET_CHARTS,
  type: CommandType.MUTATION,
  handler(accessor, { unitId, subUnitId, charts }) {
    const sheet = accessor.get(IUniverInstanceService).getUnit<Workbook>(unitId)?.getSheetBySheetId(subUnitId);
    if (sheet) setCharts(sheet, charts);
    return sheet !== undefined && sheet !== null;
  },
};

/** Gives the shown sheet other charts, so that one undo takes it back. */
export function changeCharts(grid: Grid, change: (charts: readonly SheetChart[]) => readonly SheetChart[]): void {
  const injector = servicesOf(grid.univer);
  const commands = injector.get(ICommandService);
  if (!commands.hasCommand(SET_CHARTS)) commands.registerCommand(mutation);
  const sheet = workbookOf(grid).getActiveSheet();
  const [unitId, subUnitId] = [workbookOf(grid).getId(), sheet.getSheetId()];
  const before = chartsOf(sheet.getSheet());
  const after = change(before);
  const made = (charts: readonly SheetChart[]) => [{ id: SET_CHARTS, params: { unitId, subUnitId, charts } }];
  commands.syncExecuteCommand(SET_CHARTS, made(after)[0]?.params);
  injector
    .get(IUndoRedoService)
    .pushUndoRedo({ unitID: unitId, undoMutations: made(before), redoMutations: made(after) });
}
