export {
  IEditorBridgeService,
  ISheetClipboardService,
  SetZoomRatioOperation,
  SheetSkeletonManagerService,
  SheetsUIPart,
  whenSheetEditorFocused,
} from '@univerjs/sheets-ui';
