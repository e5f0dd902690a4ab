let wide = false;

/** Runs `work` with numbers shown as if every column were wide enough: a page of print has widths of its own. */
export function widely<T>(work: () => T): T {
  wide = true;
  try {
    return work();
  } finally {
    wide = false;
  }
}

export const isWide = (): boolean => wide;
