/** The engine's dialogs where nothing may be changed: here that has one reason, and it is said in every one of them. */
export const refusalWords = (dialog: Readonly<Record<string, string>>, title: string, reason: string) =>
  Object.fromEntries(
    Object.entries(dialog).map(([key, text]) => {
      if (key === 'alert') return [key, title];
      return [key, key.endsWith('Err') || key === 'alertContent' ? reason : text];
    }),
  );
