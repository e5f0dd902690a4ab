export { CalculationMode, IDescriptionService, UniverSheetsFormulaPlugin } from '@univerjs/sheets-formula';
