import { Worker } from 'node:worker_threads';

/**
 * A call that never ends cannot say so itself: a second thread watches that lots of work begin, and ends the program
 * where none has begun for a while. Tell it which function's lot begins, and its seed.
 */
export function watchdog(names: readonly string[], seconds = 60): (name: string, seed: number) => void {
  // How many lots have begun, which name it was, and its seed.
  const lots = new Int32Array(new SharedArrayBuffer(12));
  // Plain JavaScript: the thread must load while this one is busy.
  const thread = new URL('./watchdogThread.mjs', import.meta.url);
  new Worker(thread, { workerData: { lots, names, seconds }, execArgv: [] }).unref();
  return (name, seed) => {
    lots[1] = names.indexOf(name);
    lots[2] = seed;
    Atomics.add(lots, 0, 1);
  };
}
