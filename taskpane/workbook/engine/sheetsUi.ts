export { IEditorBridgeService, ISheetClipboardService, SheetsUIPart } from '@univerjs/sheets-ui';
