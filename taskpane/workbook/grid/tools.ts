import { CommandType, ICommandService, LocaleService } from '../engine/core.js';
import { keepFiltersHere } from '../engine/mends/filtersStayHere.js';
import { servicesOf } from '../engine/services.js';
import { loadToolWords } from '../engine/words/locale.js';
import type { Grid } from './boot.js';
import { spilledCells, workbookOf } from './place.js';
import { meantRegion } from './region.js';

/** What is done with many cells at once. */
export interface Tools {
  find(): void;
  replace(): void;
  /** Sorts the table that is meant by the column of the selected cell; false where an answer of several cells stands in it. */
  sort(ascending: boolean): boolean;
  /** Puts a filter on the table that is meant, or takes the sheet’s filter away. */
  filter(): void;
}

type Engine = typeof import('../engine/tools.js');

const FILTERS = /^sheet\.mutation\..*filter/;

/** The thread that calculates is told which rows are hidden, and what leaves hidden rows out is calculated anew. */
function followFilters(grid: Grid) {
  const told = () => {
    const rows = workbookOf(grid)
      .getSheets()
      .map((sheet) => [sheet.getSheetId(), sheet.getFilter()?.getFilteredOutRows() ?? []] as const);
    grid.filteredOut?.(Object.fromEntries(rows.filter(([, out]) => out.length > 0)));
  };
  if (
    workbookOf(grid)
      .getSheets()
      .some((sheet) => sheet.getFilter())
  )
    told();
  servicesOf(grid.univer)
    .get(ICommandService)
    .onCommandExecuted(({ id, type }) => {
      if (type !== CommandType.MUTATION || !FILTERS.test(id)) return;
      told();
      grid.api.getFormula().executeCalculation();
    });
}

function register({ univer }: Grid, engine: Engine) {
  univer.registerPlugin(engine.UniverSheetsSortPlugin);
  keepFiltersHere(univer);
  univer.registerPlugin(engine.UniverSheetsFilterPlugin);
  univer.registerPlugin(engine.UniverSheetsFilterUIPlugin);
  univer.registerPlugin(engine.UniverFindReplacePlugin);
  univer.registerPlugin(engine.UniverSheetsFindReplacePlugin);
}

/** The engine starts late parts a moment after they were registered, and says of none that it is there. */
async function started({ univer }: Grid, engine: Engine) {
  const commands = servicesOf(univer).get(ICommandService);
  const last = [
    engine.SortRangeCommand,
    engine.SmartToggleSheetsFilterCommand,
    engine.ChangeFilterByOperation,
    engine.OpenReplaceDialogOperation,
    engine.SheetReplaceCommand,
  ];
  while (!last.every(({ id }) => commands.hasCommand(id))) await new Promise((resolve) => setTimeout(resolve, 5));
}

function sortTable(grid: Grid, ascending: boolean): boolean {
  const meant = meantRegion(grid);
  const { column, titles } = meant;
  const { top, left, bottom, right } = meant.list ?? meant;
  const first = titles && !meant.list ? top + 1 : top;
  if (bottom <= first) return true;
  const sheet = workbookOf(grid).getActiveSheet();
  const within = ([row, at]: readonly [number, number, unknown]) =>
    row >= first && row <= bottom && at >= left && at <= right;
  if (spilledCells(grid, sheet).some(within)) return false;
  const range = sheet.getRange(first, left, bottom - first + 1, right - left + 1);
  range.sort({ column: Math.min(Math.max(column, left), right) - left, ascending });
  return true;
}

function toggleFilter(grid: Grid, { SmartToggleSheetsFilterCommand }: Engine) {
  const sheet = workbookOf(grid).getActiveSheet();
  if (sheet.getFilter()) return void grid.api.executeCommand(SmartToggleSheetsFilterCommand.id);
  const { list, ...table } = meantRegion(grid);
  // The row of formulas above a list is the head of its filter: it is never hidden.
  const { top, left, bottom, right } = list ? { ...table, top: list.top - 1, bottom: list.bottom } : table;
  sheet.getRange(top, left, bottom - top + 1, right - left + 1).createFilter();
}

/** Loads the parts of the engine that find, sort and filter. */
export async function loadTools(grid: Grid, language: string): Promise<Tools> {
  const [engine, words] = await Promise.all([
    import(/* webpackChunkName: "tools" */ '../engine/tools.js'),
    loadToolWords(language),
  ]);
  servicesOf(grid.univer).get(LocaleService).load(words);
  register(grid, engine);
  await started(grid, engine);
  followFilters(grid);
  const run = (id: string) => void grid.api.executeCommand(id);
  return {
    find: () => run(engine.OpenFindDialogOperation.id),
    replace: () => run(engine.OpenReplaceDialogOperation.id),
    sort: (ascending) => sortTable(grid, ascending),
    filter: () => toggleFilter(grid, engine),
  };
}
