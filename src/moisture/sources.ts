/** The dry-matter balance that every moisture correction rests on, as published for shrink on drying. */
export const SHRINK_COLUMNS =
  'Balance of dry matter, as in agricultural extension columns on shrink: 56 lb at 15.5 % hold 47.32 lb of dry matter.';
