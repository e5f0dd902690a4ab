/** A sentence for whoever sees the page after it opened again: told once. */
const KEY = 'powderbook notice';

export function tellAfterReload(text: string) {
  try {
    sessionStorage.setItem(KEY, text);
  } catch {
    // Refused storage: the workbook that is open then speaks for itself.
  }
}

export function takeNotice(): string | undefined {
  try {
    const text = sessionStorage.getItem(KEY);
    sessionStorage.removeItem(KEY);
    return text ?? undefined;
  } catch {
    return undefined;
  }
}
