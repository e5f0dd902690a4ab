export { IEditorBridgeService, ISheetClipboardService } from '@univerjs/sheets-ui';
