/** The sheet that was shown last, for the next time the page opens. */
const KEY = 'powderbook sheet';

export function rememberSheet(id: string): void {
  try {
    localStorage.setItem(KEY, id);
  } catch {
    // Refused or full: the page then opens with the first sheet.
  }
}

export function rememberedSheet(): string | undefined {
  try {
    return localStorage.getItem(KEY) ?? undefined;
  } catch {
    return undefined;
  }
}
