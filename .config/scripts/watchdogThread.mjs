import { writeSync } from 'node:fs';
import { workerData } from 'node:worker_threads';

const { lots, names, seconds } = workerData;
let before = 0;

setInterval(() => {
  const now = Atomics.load(lots, 0);
  if (now !== before) {
    before = now;
    return;
  }
  const name = names[lots[1]];
  // Not process.stderr, which needs the thread that is stuck.
  writeSync(2, `${name}: no end within ${seconds} s.\n  again with: npm run fuzz -- --seed ${lots[2]} ${name}\n`);
  process.kill(process.pid, 'SIGKILL');
}, seconds * 1000);
