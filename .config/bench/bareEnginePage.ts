import { LifecycleService, LifecycleStages } from '../../taskpane/workbook/engine/core.js';
import { servicesOf } from '../../taskpane/workbook/engine/services.js';
import { IEditorBridgeService } from '../../taskpane/workbook/engine/sheetsUi.js';
import { loadLocale } from '../../taskpane/workbook/engine/words/locale.js';
import { bootGrid } from '../../taskpane/workbook/grid/boot.js';
import { blankSheet, workbookData } from '../../taskpane/workbook/grid/workbookData.js';

// The engine alone, with the plugins that the workbook uses and an empty sheet: what no page of ours can undercut.
const container = document.getElementById('workbook');
if (container) {
  container.replaceChildren();
  container.style.height = '90vh';
  const functions = { metadata: [], bound: new Map() };
  const locale = await loadLocale('en');
  const data = workbookData(blankSheet('first', 'Sheet'));
  const grid = bootGrid({ container, data, functions, locale, darkMode: false, calculates: true, left() {} });
  await servicesOf(grid.univer).get(LifecycleService).onStage(LifecycleStages.Rendered);
  // What tests of the engine's own faults look at.
  const editState = () => servicesOf(grid.univer).get(IEditorBridgeService).getLatestEditCellState();
  Object.assign(globalThis, { grid, editState });
  document.documentElement.dataset.grid = 'ready';
}
