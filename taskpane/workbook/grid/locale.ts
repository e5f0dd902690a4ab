import { LocaleType, mergeLocales } from '@univerjs/core';
import design from '@univerjs/design/locale/en-US';
import docsUi from '@univerjs/docs-ui/locale/en-US';
import sheets from '@univerjs/sheets/locale/en-US';
import conditionsUi from '@univerjs/sheets-conditional-formatting-ui/locale/en-US';
import validation from '@univerjs/sheets-data-validation/locale/en-US';
import validationUi from '@univerjs/sheets-data-validation-ui/locale/en-US';
import formula from '@univerjs/sheets-formula/locale/en-US';
import formulaUi from '@univerjs/sheets-formula-ui/locale/en-US';
import numfmtUi from '@univerjs/sheets-numfmt-ui/locale/en-US';
import sheetsUi from '@univerjs/sheets-ui/locale/en-US';
import ui from '@univerjs/ui/locale/en-US';

/** The words of the engine's own parts: its argument hints and its messages. */
export const locale = LocaleType.EN_US;
export const locales = {
  [locale]: mergeLocales(
    ...[design, ui, docsUi, sheets, sheetsUi, formula, formulaUi, numfmtUi, conditionsUi, validation, validationUi],
  ),
};
