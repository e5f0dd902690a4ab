/** The parts of the engine that need a page: only what loads with the grid asks for them. */
import '@univerjs/engine-formula/facade';
import '@univerjs/sheets/facade';
import '@univerjs/sheets-ui/facade';
import '@univerjs/sheets-formula/facade';
import '@univerjs/sheets-numfmt/facade';
import '@univerjs/design/lib/index.css';
import '@univerjs/ui/lib/index.css';
import '@univerjs/docs-ui/lib/index.css';
import '@univerjs/sheets-ui/lib/index.css';
import '@univerjs/sheets-formula-ui/lib/index.css';
import '@univerjs/sheets-numfmt-ui/lib/index.css';
import '@univerjs/sheets-conditional-formatting-ui/lib/index.css';
import '@univerjs/sheets-data-validation-ui/lib/index.css';

export { UniverDocsPlugin } from '@univerjs/docs';
export { UniverDocsUIPlugin } from '@univerjs/docs-ui';
export { UniverRenderEnginePlugin } from '@univerjs/engine-render';
export { UniverSheetsConditionalFormattingUIPlugin } from '@univerjs/sheets-conditional-formatting-ui';
export { UniverSheetsDataValidationUIPlugin } from '@univerjs/sheets-data-validation-ui';
export { UniverSheetsFormulaUIPlugin } from '@univerjs/sheets-formula-ui';
export { UniverSheetsNumfmtUIPlugin } from '@univerjs/sheets-numfmt-ui';
export { UniverSheetsUIPlugin } from '@univerjs/sheets-ui';
export { UniverUIPlugin } from '@univerjs/ui';
