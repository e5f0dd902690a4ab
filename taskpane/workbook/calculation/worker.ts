import { filter, fromEvent, map, share } from 'rxjs';
import { bindAll } from '../../../functions/bind.js';
import { metadata } from '../../../functions/metadata.js';
import { ICommandService, LocaleType, LogLevel, Univer } from '../engine/core.js';
import { ISheetRowFilteredService, SetFormulaCalculationResultMutation } from '../engine/formula.js';
import { beforeFirstCalculation } from '../engine/mends/firstCalculation.js';
import {
  ChannelService,
  DataSyncReplicaController,
  IRemoteInstanceService,
  IRPCChannelService,
  WebWorkerRemoteInstanceService,
} from '../engine/rpc.js';
import { servicesOf } from '../engine/services.js';
import { answers } from '../formula/cellError.js';
import { registerCalculating } from '../formula/engine.js';
import { bound } from './bound.js';
import { type FromThread, isToThread } from './signals.js';
import { Telling } from './telling.js';
import { tellSentences } from './tellSentences.js';

/** What a thread has in place of a window. */
const thread = globalThis as unknown as EventTarget & { postMessage(message: unknown): void };
const signal = (message: FromThread) => thread.postMessage(message);

const univer = new Univer({ locale: LocaleType.EN_US, locales: { [LocaleType.EN_US]: {} }, logLevel: LogLevel.ERROR });
const injector = servicesOf(univer);
const received = fromEvent<MessageEvent<unknown>>(thread, 'message').pipe(
  map(({ data }) => data),
  share(),
);
const port = {
  send: (message: unknown) => thread.postMessage(message),
  onMessage: received.pipe(filter((message) => !isToThread(message))),
};
injector.add([IRPCChannelService, { useFactory: () => new ChannelService(port) }]);
injector.add([IRemoteInstanceService, { useClass: WebWorkerRemoteInstanceService }]);
injector.add([DataSyncReplicaController]);
const messages = registerCalculating(univer, { metadata: metadata('').functions, bound: bindAll(answers) });
const rests = bound(univer, { telling: new Telling(signal), tooLarge: (tooLarge) => signal({ tooLarge }) });
// Rows that a filter hides are none to SUBTOTAL; what the filter looks for is known to the page alone.
const filteredOut = new Map<string, ReadonlySet<number>>();
beforeFirstCalculation(univer, () =>
  injector.get(ISheetRowFilteredService).register((_, sheet, row) => filteredOut.get(sheet)?.has(row) ?? false),
);
received.pipe(filter(isToThread)).subscribe((message) => {
  if ('ping' in message) signal({ pong: true });
  else if ('rests' in message) rests(message);
  else {
    filteredOut.clear();
    for (const [sheet, rows] of Object.entries(message.filteredOut)) filteredOut.set(sheet, new Set(rows));
  }
});
injector.get(DataSyncReplicaController);
// The engine is not to be relied on any more once it has broken off in the middle of something.
thread.addEventListener('unhandledrejection', () => signal({ broken: true }));
// Before the values: whoever then looks at an error finds its sentence.
const commands = injector.get(ICommandService);
commands.registerCommand(tellSentences());
commands.beforeCommandExecuted(({ id }) => {
  if (id !== SetFormulaCalculationResultMutation.id) return;
  const changes = messages.changes();
  if (changes.length > 0) commands.syncExecuteCommand(tellSentences().id, { changes });
});
