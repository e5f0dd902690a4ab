import {
  ICommandService,
  IUniverInstanceService,
  type Univer,
  UniverInstanceType,
  type Workbook,
} from '../engine/core.js';
import {
  FormulaExecutedStateType,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationStartMutation,
} from '../engine/formula.js';
import { leaveEntriesAlone } from '../engine/mends/leaveEntriesAlone.js';
import {
  ChannelService,
  DataSyncPrimaryController,
  IRemoteSyncService,
  IRPCChannelService,
  RemoteSyncPrimaryService,
} from '../engine/rpc.js';
import { servicesOf } from '../engine/services.js';
import type { Messages } from '../formula/messages.js';
import { handingOver, markEmpty } from './handOver.js';
import { lifted } from './lifted.js';
import type { FilteredOut, Place } from './signals.js';
import { type Calculation, Standing } from './standing.js';
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
export function calculateElsewhere(
  univer: Univer,
  messages: Messages,
  { calculates, left: tell }: Options,
): Calculation & { filteredOut(rows: FilteredOut): void } {
  const injector = servicesOf(univer);
  const commands = injector.get(ICommandService);
  const standing = new Standing(calculates ? 'idle' : 'stopped');
  const thread = new Thread({ ended, tooLarge });
  if (calculates) thread.begin();
  let rests: readonly Place[] = [];
  let large: readonly Place[] = [];
  let inARow = 0;
  let filteredOut: FilteredOut = {};
  /** After a calculation that ended somewhere about a place, the next one tells of every formula. */
  let exactly = false;

  injector.add([IRPCChannelService, { useFactory: () => new ChannelService(thread) }]);
  injector.add([IRemoteSyncService, { useClass: RemoteSyncPrimaryService }]);
  injector.add([DataSyncPrimaryController]);
  injector.get(DataSyncPrimaryController);
  commands.registerCommand(tellSentences((changes) => messages.take(changes)));
  const handOver = handingOver(injector);
  leaveEntriesAlone(univer);
  commands.onCommandExecuted((command) => {
    const { functionsExecutedState: state } = (command.params ?? {}) as { functionsExecutedState?: number };
    if (command.id === SetFormulaCalculationStartMutation.id) standing.asked();
    if (command.id === SetFormulaCalculationNotificationMutation.id && state !== undefined) standing.through();
    const through =
      command.id === SetFormulaCalculationNotificationMutation.id && state === FormulaExecutedStateType.SUCCESS;
    if (through) inARow = 0;
    large = lifted(large, command);
    const left = lifted(rests, command);
    if (left.length === rests.length && !(through && exactly)) return;
    rests = left;
    exactly &&= !through;
    thread.send({ rests, exactly });
  });

  const workbook = () =>
    injector.get(IUniverInstanceService).getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET);
  const nameOf = (sheet: string) => workbook()?.getSheetBySheetId(sheet)?.getName() ?? '';

  /** The page's own bookkeeping waits for an answer that will not come. */
  function forgetAnswer() {
    const stopped = { functionsExecutedState: FormulaExecutedStateType.STOP_EXECUTION };
    commands.syncExecuteCommand(SetFormulaCalculationNotificationMutation.id, stopped, { ...LOCAL, fromSync: true });
  }

  /** Another thread goes on with the workbook as it stands, without what rests. */
  function goOn(unit: Workbook) {
    thread.begin();
    thread.send({ rests, exactly });
    thread.send({ filteredOut });
    handOver(unit);
    forgetAnswer();
    void commands.executeCommand(SetFormulaCalculationStartMutation.id, { forceCalculation: true }, LOCAL);
  }

  /** Told once, and of the first few: they are found anew with each calculation. */
  function tooLarge(place: Place) {
    if (large.length === MOST_TOLD || large.some((one) => String(one) === String(place))) return;
    large = [...large, place];
    const [sheet, row, column] = place;
    tell({ kind: 'tooLarge', sheet: nameOf(sheet), row, column });
  }

  function ended(place: Place | null, about: boolean) {
    const unit = workbook();
    if (unit && place && about) {
      exactly = true;
      return goOn(unit);
    }
    inARow += 1;
    if (!unit || place === null || inARow > MOST_IN_A_ROW) {
      forgetAnswer();
      standing.stop();
      return tell({ kind: 'all' });
    }
    rests = [...rests, place];
    markEmpty(injector, unit, place);
    goOn(unit);
    const [sheet, row, column] = place;
    tell(row < 0 ? { kind: 'rules', sheet: nameOf(sheet) } : { kind: 'formula', sheet: nameOf(sheet), row, column });
  }

  return {
    filteredOut(rows) {
      filteredOut = rows;
      thread.send({ filteredOut });
    },
    watch: (listener) => standing.watch(listener),
    first: standing.first,
    upToDate: () => standing.upToDate(),
    stop() {
      thread.end();
      forgetAnswer();
      standing.stop();
    },
    begin() {
      const unit = workbook();
      if (!unit) return;
      inARow = 0;
      standing.begin();
      goOn(unit);
    },
  };
}
