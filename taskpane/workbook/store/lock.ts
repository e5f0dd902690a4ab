/**
 * Whether this page may save. Two pages with the same workbook would overwrite each other, so the first one
 * open holds a lock until it closes. Where the browser has no locks, each page saves.
 */
export function mayWrite(): Promise<boolean> {
  if (!navigator.locks) return Promise.resolve(true);
  return new Promise((resolve) => {
    void navigator.locks.request('powderbook workbook', { ifAvailable: true }, (lock) => {
      resolve(lock !== null);
      return lock ? new Promise(() => {}) : undefined;
    });
  });
}
