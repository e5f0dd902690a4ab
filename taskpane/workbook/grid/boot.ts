import { type IWorkbookData, LogLevel, Univer, UniverInstanceType } from '@univerjs/core';
import { FUniver } from '@univerjs/core/facade';
import { UniverDocsPlugin } from '@univerjs/docs';
import { UniverDocsUIPlugin } from '@univerjs/docs-ui';
import { UniverRenderEnginePlugin } from '@univerjs/engine-render';
import { UniverSheetsConditionalFormattingPlugin } from '@univerjs/sheets-conditional-formatting';
import { UniverSheetsConditionalFormattingUIPlugin } from '@univerjs/sheets-conditional-formatting-ui';
import { UniverSheetsDataValidationPlugin } from '@univerjs/sheets-data-validation';
import { UniverSheetsDataValidationUIPlugin } from '@univerjs/sheets-data-validation-ui';
import { UniverSheetsFormulaUIPlugin } from '@univerjs/sheets-formula-ui';
import { UniverSheetsNumfmtUIPlugin } from '@univerjs/sheets-numfmt-ui';
import { UniverSheetsUIPlugin } from '@univerjs/sheets-ui';
import { UniverUIPlugin } from '@univerjs/ui';
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
import { calculateElsewhere, type Left } from '../calculation/elsewhere.js';
import { type Functions, registerHolding } from '../formula/engine.js';
import { Messages } from '../formula/messages.js';
import type { Locale } from './locale.js';
import { menu } from './menu.js';

export interface Grid {
  readonly univer: Univer;
  readonly api: FUniver;
  readonly messages: Messages;
}

interface Boot {
  readonly container: HTMLElement;
  readonly data: IWorkbookData;
  readonly functions: Functions;
  readonly locale: Locale;
  readonly darkMode: boolean;
  readonly calculates: boolean;
  /** Told what could not be calculated to its end. */
  left(what: Left): void;
}

/** Starts the engine in `container` with only its formula bar and cells; menus and tabs are the page's own. */
export function bootGrid({
  container,
  data,
  functions,
  locale: { locale, words },
  darkMode,
  calculates,
  left,
}: Boot): Grid {
  const univer = new Univer({ locale, locales: { [locale]: words }, darkMode, logLevel: LogLevel.ERROR });
  univer.registerPlugin(UniverRenderEnginePlugin);
  univer.registerPlugin(UniverUIPlugin, {
    container,
    header: true,
    toolbar: false,
    headerMenu: false,
    contextMenu: true,
    footer: false,
    disableAutoFocus: true,
  });
  univer.registerPlugin(UniverDocsPlugin);
  univer.registerPlugin(UniverDocsUIPlugin);
  const messages = new Messages();
  calculateElsewhere(univer, messages, { calculates, left });
  registerHolding(univer, functions, messages);
  univer.registerPlugin(UniverSheetsUIPlugin, {
    formulaBar: true,
    footer: false,
    disableForceStringAlert: true,
    disableForceStringMark: true,
    clipboardConfig: { hidePasteOptions: true },
    menu,
  });
  univer.registerPlugin(UniverSheetsNumfmtUIPlugin);
  univer.registerPlugin(UniverSheetsFormulaUIPlugin);
  univer.registerPlugin(UniverSheetsConditionalFormattingPlugin);
  univer.registerPlugin(UniverSheetsConditionalFormattingUIPlugin);
  univer.registerPlugin(UniverSheetsDataValidationPlugin);
  univer.registerPlugin(UniverSheetsDataValidationUIPlugin, {
    showEditOnDropdown: false,
    showSearchOnDropdown: false,
  });
  univer.createUnit(UniverInstanceType.UNIVER_SHEET, data);
  return { univer, api: FUniver.newAPI(univer), messages };
}
