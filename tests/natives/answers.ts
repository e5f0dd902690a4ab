import kept from './libreoffice.json' with { type: 'json' };

export type Single = number | string | boolean;
/** One answer, or rows of them where it fills several cells. */
export type Value = Single | readonly (readonly Single[])[];

/** What LibreOffice calculated for each case, and which version of it. */
export const answers = kept as { readonly version: string; readonly values: Readonly<Record<string, Value>> };
