export { UniverSheetsDataValidationPlugin } from '@univerjs/sheets-data-validation';
