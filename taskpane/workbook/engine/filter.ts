/** What filters are, for parts of the page that know nothing of them but their form. */
export type { IAutoFilter, ICustomFilter, IFilterColumn } from '@univerjs/sheets-filter';
export { UniverSheetsFilterPlugin } from '@univerjs/sheets-filter';
