import {
  CellValueType,
  ICommandService,
  IResourceLoaderService,
  IUniverInstanceService,
  type Univer,
  UniverInstanceType,
  type Workbook,
} from '../engine/core.js';
import {
  ErrorType,
  FormulaDataModel,
  FormulaExecutedStateType,
  SetArrayFormulaDataMutation,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationStartMutation,
} from '../engine/formula.js';
import { leaveEntriesAlone } from '../engine/mends/leaveEntriesAlone.js';
import {
  ChannelService,
  DataSyncPrimaryController,
  IRemoteInstanceService,
  IRemoteSyncService,
  IRPCChannelService,
  RemoteSyncPrimaryService,
} from '../engine/rpc.js';
import { servicesOf } from '../engine/services.js';
import { SetRangeValuesMutation } from '../engine/sheets.js';
import type { Messages } from '../formula/messages.js';
import { lifted } from './lifted.js';
import { rulesOf } from './rules.js';
import type { Place } from './signals.js';
import { tellSentences } from './tellSentences.js';
import { Thread } from './thread.js';

/** What was left uncalculated: one formula, the rules of a sheet, or everything from then on. */
export type Left =
  | { readonly kind: 'formula' | 'tooLarge'; readonly sheet: string; readonly row: number; readonly column: number }
  | { readonly kind: 'rules'; readonly sheet: string }
  | { readonly kind: 'all' };

/** So many formulas in a row may each take their time until it ends; then nothing more is tried. */
const MOST_IN_A_ROW = 3;
/** So many formulas that ask for too much are told of. */
const MOST_TOLD = 5;
const LOCAL = { onlyLocal: true };

interface Options {
  /** Whether anything is calculated at all. */
  readonly calculates: boolean;
  left(what: Left): void;
}

/** Has the workbook of this page calculated by a thread of its own. Whatever does not come to an end there is left. */
export function calculateElsewhere(univer: Univer, messages: Messages, { calculates, left: tell }: Options): void {
  const injector = servicesOf(univer);
  const commands = injector.get(ICommandService);
  const thread = new Thread({ ended, tooLarge });
  if (calculates) thread.begin();
  let rests: readonly Place[] = [];
  let large: readonly Place[] = [];
  let inARow = 0;

  injector.add([IRPCChannelService, { useFactory: () => new ChannelService(thread) }]);
  injector.add([IRemoteSyncService, { useClass: RemoteSyncPrimaryService }]);
  injector.add([DataSyncPrimaryController]);
  injector.get(DataSyncPrimaryController);
  commands.registerCommand(tellSentences((changes) => messages.take(changes)));
  const rules = rulesOf(commands);
  leaveEntriesAlone(univer);
  commands.onCommandExecuted((command) => {
    const { functionsExecutedState: state } = (command.params ?? {}) as { functionsExecutedState?: number };
    if (command.id === SetFormulaCalculationNotificationMutation.id && state === FormulaExecutedStateType.SUCCESS)
      inARow = 0;
    large = lifted(large, command);
    const left = lifted(rests, command);
    if (left.length === rests.length) return;
    rests = left;
    thread.send({ rests });
  });

  const workbook = () =>
    injector.get(IUniverInstanceService).getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET);
  const nameOf = (sheet: string) => workbook()?.getSheetBySheetId(sheet)?.getName() ?? '';

  /** A formula that never had a value shows that it has none. */
  function markEmpty(unit: Workbook, [sheet, row, column]: Place) {
    const { v } = unit.getSheetBySheetId(sheet)?.getCellRaw(row, column) ?? {};
    if (row < 0 || (v !== undefined && v !== null && v !== '')) return;
    const cellValue = { [row]: { [column]: { v: ErrorType.CALC, t: CellValueType.STRING } } };
    commands.syncExecuteCommand(
      SetRangeValuesMutation.id,
      { unitId: unit.getUnitId(), subUnitId: sheet, cellValue },
      { ...LOCAL, fromFormula: true },
    );
  }

  /** Another thread goes on with the workbook as it stands, without what rests. */
  function goOn(unit: Workbook) {
    const unitID = unit.getUnitId();
    const model = injector.get(FormulaDataModel);
    const remote = injector.get(IRemoteInstanceService);
    thread.begin();
    thread.send({ rests });
    void remote.createInstance({
      unitID,
      type: UniverInstanceType.UNIVER_SHEET,
      snapshot: injector.get(IResourceLoaderService).saveUnit(unitID) ?? unit.getSnapshot(),
    });
    const params = {
      arrayFormulaRange: model.getArrayFormulaRange(),
      arrayFormulaCellData: model.getArrayFormulaCellData(),
    };
    void remote.syncMutation({ mutationInfo: { id: SetArrayFormulaDataMutation.id, params } }, LOCAL);
    for (const mutationInfo of rules()) void remote.syncMutation({ mutationInfo }, LOCAL);
  }

  /** Told once, and of the first few: they are found anew with each calculation. */
  function tooLarge(place: Place) {
    if (large.length === MOST_TOLD || large.some((one) => String(one) === String(place))) return;
    large = [...large, place];
    const [sheet, row, column] = place;
    tell({ kind: 'tooLarge', sheet: nameOf(sheet), row, column });
  }

  function ended(place: Place | null) {
    const unit = workbook();
    if (!unit) return tell({ kind: 'all' });
    inARow += 1;
    const goesOn = place !== null && inARow <= MOST_IN_A_ROW;
    if (goesOn) {
      rests = [...rests, place];
      markEmpty(unit, place);
      goOn(unit);
    }
    // The page's own bookkeeping waits for an answer that will not come.
    const stopped = { functionsExecutedState: FormulaExecutedStateType.STOP_EXECUTION };
    commands.syncExecuteCommand(SetFormulaCalculationNotificationMutation.id, stopped, { ...LOCAL, fromSync: true });
    if (!goesOn) return tell({ kind: 'all' });
    void commands.executeCommand(SetFormulaCalculationStartMutation.id, { forceCalculation: true }, LOCAL);
    const [sheet, row, column] = place;
    tell(row < 0 ? { kind: 'rules', sheet: nameOf(sheet) } : { kind: 'formula', sheet: nameOf(sheet), row, column });
  }
}
