import kept from './libreoffice.json' with { type: 'json' };

export type Value = number | string | boolean;

/** What LibreOffice calculated for each case, and which version of it. */
export const answers = kept as { readonly version: string; readonly values: Readonly<Record<string, Value>> };
