import { filter, fromEvent, map, share } from 'rxjs';
import { bindAll } from '../../../functions/bind.js';
import { metadata } from '../../../functions/metadata.js';
import { ICommandService, LocaleType, LogLevel, Univer } from '../engine/core.js';
import { SetFormulaCalculationResultMutation } from '../engine/formula.js';
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
received.pipe(filter(isToThread)).subscribe((message) => {
  if ('ping' in message) signal({ pong: true });
  else rests(message);
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
