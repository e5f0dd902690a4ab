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
import { host } from '../../../texts/host.en.js';
import { LocaleType, mergeLocales } from '../core.js';
import { refusalWords } from './refusal.js';

/** Plainer words than the engine's for its list of names and its menu on cells. */
const inSheets = sheetsUi['sheets-ui'];
const names = {
  ...inSheets.definedName,
  managerTitle: 'Names in this workbook',
  managerDescription: 'A name stands for a cell or a range; formulas can use it in place of the address.',
  addButton: 'Add a name',
  featureTitle: 'Names',
  confirm: 'Keep',
  inputNamePlaceholder: 'Name, without spaces',
  inputCommentPlaceholder: 'Comment',
  inputRangePlaceholder: 'Range, without spaces',
  inputFormulaPlaceholder: 'Formula, without spaces',
  formulaOrRefStringInvalid: 'This is neither a formula nor a range.',
  defaultName: 'Name',
  deleteConfirmText: 'Delete this name? Formulas that use it will show an error.',
};
const menu = {
  ...inSheets.rightClick,
  insertRowsAfterSuffix: 'rows below',
  insertColsLeftSuffix: 'columns to the left',
  insertColsRightSuffix: 'columns to the right',
  deleteSelectedRow: 'Delete these rows',
  deleteSelectedColumn: 'Delete these columns',
  hideSelectedRow: 'Hide these rows',
  showHideRow: 'Show hidden rows',
  hideSelectedColumn: 'Hide these columns',
  showHideColumn: 'Show hidden columns',
  rowHeight: 'Row height',
  columnWidth: 'Column width',
  moveLeft: 'Cells; those to the right move in',
  moveUp: 'Cells; those below move up',
  moveRight: 'Cells; these move to the right',
  moveDown: 'Cells; these move down',
  clearContent: 'Contents',
  clearFormat: 'Formats',
  clearAll: 'Contents and formats',
  fitContent: 'As wide or high as its contents',
  cancelFreeze: 'Freeze nothing',
};

const permission = {
  ...inSheets.permission,
  dialog: refusalWords(inSheets.permission.dialog, 'Read only', host.readOnly),
};

export const locale = LocaleType.EN_US;
export const words = mergeLocales(
  ...[design, ui, docsUi, sheets, sheetsUi, formula, formulaUi, numfmtUi, conditionsUi, validation, validationUi],
  { 'sheets-ui': { ...inSheets, definedName: names, rightClick: menu, permission } },
);
