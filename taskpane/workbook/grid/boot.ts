import { calculateElsewhere, type Left } from '../calculation/elsewhere.js';
import type { FilteredOut } from '../calculation/signals.js';
import type { Calculation } from '../calculation/standing.js';
import { UniverSheetsConditionalFormattingPlugin } from '../engine/conditions.js';
import { type IWorkbookData, LogLevel, Univer, UniverInstanceType } from '../engine/core.js';
import { FUniver } from '../engine/facade.js';
import { mendLongTexts } from '../engine/mends/longTexts.js';
import { mendManyFrames } from '../engine/mends/manyFrames.js';
import {
  UniverDocsPlugin,
  UniverDocsUIPlugin,
  UniverRenderEnginePlugin,
  UniverSheetsConditionalFormattingUIPlugin,
  UniverSheetsDataValidationUIPlugin,
  UniverSheetsFormulaUIPlugin,
  UniverSheetsNumfmtUIPlugin,
  UniverSheetsUIPlugin,
  UniverUIPlugin,
} from '../engine/page.js';
import { servicesOf } from '../engine/services.js';
import { SheetsUIPart } from '../engine/sheetsUi.js';
import { IUIPartsService } from '../engine/ui.js';
import { UniverSheetsDataValidationPlugin } from '../engine/validation.js';
import type { Locale } from '../engine/words/locale.js';
import { type Functions, registerHolding } from '../formula/engine.js';
import { Messages } from '../formula/messages.js';
import { filteredOutOf } from './filters.js';
import { menu } from './menu.js';

export interface Grid {
  readonly univer: Univer;
  readonly api: FUniver;
  readonly messages: Messages;
  /** Tells the thread that calculates which rows a filter hides. */
  filteredOut?(rows: FilteredOut): void;
}

export interface BootedGrid extends Grid {
  readonly calculation: Calculation;
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
}: Boot): BootedGrid {
  mendManyFrames();
  mendLongTexts();
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
  const calculation = calculateElsewhere(univer, messages, { calculates, left });
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
  // The parts that filter load later; what leaves hidden rows out is right from the first calculation on.
  calculation.filteredOut(filteredOutOf(data));
  univer.createUnit(UniverInstanceType.UNIVER_SHEET, data);
  // The page says itself, and more plainly, that a calculation lasts.
  servicesOf(univer).get(IUIPartsService).setUIVisible(SheetsUIPart.FORMULA_AUX, false);
  const filteredOut = (rows: FilteredOut) => calculation.filteredOut(rows);
  return { univer, api: FUniver.newAPI(univer), messages, calculation, filteredOut };
}
