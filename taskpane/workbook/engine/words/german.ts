import design from '@univerjs/design/locale/de-DE';
import docsUi from '@univerjs/docs-ui/locale/de-DE';
import sheets from '@univerjs/sheets/locale/de-DE';
import conditionsUi from '@univerjs/sheets-conditional-formatting-ui/locale/de-DE';
import validation from '@univerjs/sheets-data-validation/locale/de-DE';
import validationUi from '@univerjs/sheets-data-validation-ui/locale/de-DE';
import formula from '@univerjs/sheets-formula/locale/de-DE';
import formulaUi from '@univerjs/sheets-formula-ui/locale/de-DE';
import numfmtUi from '@univerjs/sheets-numfmt-ui/locale/de-DE';
import sheetsUi from '@univerjs/sheets-ui/locale/de-DE';
import ui from '@univerjs/ui/locale/de-DE';
import { host } from '../../../texts/host.de.js';
import { LocaleType, mergeLocales } from '../core.js';
import { refusalWords } from './refusal.js';

const inSheets = sheetsUi['sheets-ui'];
const permission = {
  ...inSheets.permission,
  dialog: refusalWords(inSheets.permission.dialog, 'Nur zum Lesen', host.readOnly),
};

export const locale = LocaleType.DE_DE;
export const words = mergeLocales(
  ...[design, ui, docsUi, sheets, sheetsUi, formula, formulaUi, numfmtUi, conditionsUi, validation, validationUi],
  { 'sheets-ui': { ...inSheets, permission } },
);
