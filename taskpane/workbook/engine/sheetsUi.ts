export {
  IEditorBridgeService,
  ISheetClipboardService,
  SetZoomRatioOperation,
  SheetsUIPart,
  whenSheetEditorFocused,
} from '@univerjs/sheets-ui';
