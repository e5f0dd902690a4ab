/** One text that the browser keeps for the page. */
export interface Kept {
  /** Undefined where nothing was kept. */
  read(): string | undefined;
  /** Whether it is kept now. */
  write(text: string): boolean;
  forget(): void;
}

/**
 * A text under a key of one of the page's small storages, which are written before anything else can happen. Where the
 * browser refuses them, or they are full, nothing is kept and nothing is found.
 */
export function kept(storage: () => Storage, key: string): Kept {
  const attempt = <T>(work: (open: Storage) => T): T | undefined => {
    try {
      return work(storage());
    } catch {
      return undefined;
    }
  };
  return {
    read: () => attempt((open) => open.getItem(key)) ?? undefined,
    write: (text) =>
      attempt((open) => {
        open.setItem(key, text);
        return true;
      }) ?? false,
    forget: () => attempt((open) => open.removeItem(key)),
  };
}
