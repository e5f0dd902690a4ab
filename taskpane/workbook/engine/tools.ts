/** The parts of the engine that nobody needs at once: they load when the grid can be used. */
import '@univerjs/sheets-filter/facade';
import '@univerjs/sheets-sort/facade';
import '@univerjs/find-replace/lib/index.css';
import '@univerjs/sheets-filter-ui/lib/index.css';

export { OpenFindDialogOperation, OpenReplaceDialogOperation, UniverFindReplacePlugin } from '@univerjs/find-replace';
export {
  SmartToggleSheetsFilterCommand,
  UniverSheetsFilterPlugin,
} from '@univerjs/sheets-filter';
export { ChangeFilterByOperation, UniverSheetsFilterUIPlugin } from '@univerjs/sheets-filter-ui';
export { SheetReplaceCommand, UniverSheetsFindReplacePlugin } from '@univerjs/sheets-find-replace';
export { SortRangeCommand, UniverSheetsSortPlugin } from '@univerjs/sheets-sort';
