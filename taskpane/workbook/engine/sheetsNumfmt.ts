export { UniverSheetsNumfmtPlugin } from '@univerjs/sheets-numfmt';
