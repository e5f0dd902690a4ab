const NAME = 'powderbook workbook';
/** How long the page that writes may take to save what it has, before its place is taken all the same. */
const PATIENCE = 5000;

let release = () => {};

/** Holds the lock that was granted until it is handed over or the page closes; `undefined` where none was. */
const hold = (lock: Lock | null): Promise<void> | undefined =>
  lock
    ? new Promise((done) => {
        release = done;
      })
    : undefined;

/**
 * Whether this page may save. Two pages with the same workbook would overwrite each other, so the first one
 * open holds a lock until it closes or hands it over. Where the browser has no locks, each page saves.
 * @param lost told once another page has taken the lock away
 */
export function mayWrite(lost: () => void): Promise<boolean> {
  if (!navigator.locks) return Promise.resolve(true);
  return new Promise((resolve) => {
    const held = navigator.locks.request(NAME, { ifAvailable: true }, (lock) => {
      resolve(lock !== null);
      return hold(lock);
    });
    held.catch(lost);
  });
}

/** Lets another page write from now on, once `finish` is done, whenever one asks for it. */
export function handOverWhenAsked(finish: () => Promise<void>): void {
  new BroadcastChannel(NAME).addEventListener('message', () => {
    void finish().finally(() => release());
  });
}

/** Asks the page that writes to save what it has and to write no more. Resolves when the workbook is free. */
export async function takeOver(): Promise<void> {
  const channel = new BroadcastChannel(NAME);
  channel.postMessage('hand over');
  channel.close();
  const taken = (options: LockOptions) => navigator.locks.request(NAME, options, () => undefined);
  // A page that hangs answers nobody.
  await taken({ signal: AbortSignal.timeout(PATIENCE) }).catch(() => taken({ steal: true }));
}
