/** What each starter sheet is called by, in the order in which they are offered. */
export const SHEET_KEYS = ['dosing', 'trial', 'quotes', 'year'] as const;
export type SheetKey = (typeof SHEET_KEYS)[number];
