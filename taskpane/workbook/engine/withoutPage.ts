/** The engine's short ways to workbooks and formulas, for a workbook that no page shows. */
import '@univerjs/engine-formula/facade';
import '@univerjs/sheets/facade';
import '@univerjs/sheets-formula/facade';
import '@univerjs/sheets-numfmt/facade';

export { FUniver } from '@univerjs/core/facade';
