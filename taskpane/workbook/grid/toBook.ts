import type { SheetCondition } from '../../../src/sheets/sheet.js';
import { a1 } from '../../host/a1.js';
import { lookOfFill } from '../../host/judgedLooks.js';
import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IRange,
  type IStyleData,
  type IWorksheetData,
  type Nullable,
} from '../engine/core.js';
import { FormulaDataModel } from '../engine/formula.js';
import { servicesOf } from '../engine/services.js';
import type { Book, BookCell, BookSheet } from '../xlsx/book.js';
import { isError } from '../xlsx/errors.js';
import type { PageSetup } from '../xlsx/pageSetup.js';
import { alignOfStyle, lookOfStyle, UNFORMATTED } from './bookStyle.js';
import type { Grid } from './boot.js';
import { contentOf } from './cells.js';
import { chartsOf } from './chartMarks.js';
import { FILTERS, filterOfSaved, type SavedFilters } from './filters.js';
import { fixedOf } from './fixed.js';
import { formulasOf } from './formulas.js';
import { hiddenOf } from './hiddenLines.js';
import { writableKept } from './kept.js';
import { namesOfSaved, type savedNames } from './names.js';
import { noteOf } from './notes.js';
import { isErrorCell, savedWorkbook, workbookOf } from './place.js';
import { printedNow } from './printed.js';
import { heightsOf } from './rowHeights.js';
import { charactersOf } from './workbookData.js';

type Matrix<T> = Readonly<Record<number, Readonly<Record<number, T>>>>;

/** Several cells as an address, such as `B2:B10`. */
const addressOf = ({ startRow, endRow, startColumn, endColumn }: IRange): string =>
  `${a1(startRow, startColumn)}:${a1(endRow, endColumn)}`;

function cellOf(
  cell: Nullable<ICellData>,
  answer: Nullable<ICellData>,
  { formula, kept }: Pick<BookCell, 'formula' | 'kept'>,
  fills: IRange | undefined,
  styles: Readonly<Record<string, Nullable<IStyleData>>>,
): BookCell | undefined {
  const style = typeof cell?.s === 'string' ? styles[cell.s] : cell?.s;
  const shown = answer ?? cell;
  // The empty text that a formula answers with is an answer, and one from a file is a text; elsewhere it is nothing.
  const isText = formula || shown?.t === CellValueType.FORCE_STRING;
  const value = isText && shown?.v === '' ? '' : contentOf(shown);
  const error = isErrorCell(shown) && typeof value === 'string' && isError(value) ? value : undefined;
  const { validation, rule, note } = (cell?.custom ?? {}) as Pick<BookCell, 'validation' | 'rule' | 'note'>;
  const remark = noteOf(cell);
  const look = style ? lookOfStyle(style) : {};
  const align = style ? alignOfStyle(style) : {};
  const several = fills && (fills.endRow > fills.startRow || fills.endColumn > fills.startColumn);
  const told: BookCell = {
    ...(error ? { error } : value === null ? {} : { value }),
    ...(formula ? { formula } : {}),
    ...(kept ? { kept } : {}),
    ...(formula && several ? { spill: addressOf(fills) } : {}),
    ...fixedOf(cell, formula),
    ...(style?.n && style.n.pattern !== UNFORMATTED ? { format: style.n.pattern } : {}),
    ...(Object.keys(look).length > 0 ? { look } : {}),
    ...(Object.keys(align).length > 0 ? { align } : {}),
    ...(validation ? { validation } : {}),
    ...((validation || note) && rule ? { rule } : {}),
    ...(note ? { note } : {}),
    ...(remark ? { remark } : {}),
  };
  return Object.keys(told).length > 0 ? told : undefined;
}

interface SavedRule {
  readonly ranges: readonly IRange[];
  readonly rule: { readonly value?: unknown; readonly style?: IStyleData };
}

function conditionsOf(rules: readonly SavedRule[]): readonly SheetCondition[] {
  return rules.flatMap(({ ranges, rule: { value, style } }) =>
    typeof value === 'string' && value.startsWith('=')
      ? ranges.map((range) => ({
          range: addressOf(range),
          formula: value,
          look: lookOfFill(style?.bg?.rgb ?? undefined) ?? 'unusual',
        }))
      : [],
  );
}

/** How a file hid a sheet that is still hidden; one that was hidden here is on offer everywhere. */
const hiddenAs = (custom: IWorksheetData['custom']): BookSheet['hidden'] =>
  custom?.hidden === 'veryHidden' ? 'veryHidden' : 'hidden';

/** The workbook in the grid as it stands, with the answers of its formulas. */
export function bookOfGrid(grid: Grid): Book {
  const workbook = workbookOf(grid);
  const saved = savedWorkbook(grid);
  const resource = <T>(name: string): T | undefined => {
    const data = saved.resources?.find((one) => one.name === name)?.data;
    return data ? (JSON.parse(data) as T) : undefined;
  };
  const model = servicesOf(grid.univer).get(FormulaDataModel);
  const answers = model.getArrayFormulaCellData()[saved.id];
  const fills = model.getArrayFormulaRange()[saved.id];
  const rules = resource<Record<string, readonly SavedRule[]>>('SHEET_CONDITIONAL_FORMATTING_PLUGIN') ?? {};
  const filters = resource<SavedFilters>(FILTERS) ?? {};
  const names = namesOfSaved(
    Object.values(resource<ReturnType<typeof savedNames>>('SHEET_DEFINED_NAME_PLUGIN') ?? {}),
    new Map(saved.sheetOrder.map((id) => [id, saved.sheets[id]?.name ?? id])),
  );
  const sheetNames = saved.sheetOrder.map((id) => saved.sheets[id]?.name ?? id);
  const keptAt = (cell: Nullable<ICellData>) => writableKept(cell, sheetNames, saved.custom);
  const sheetOf = (id: string): BookSheet => {
    const sheet = saved.sheets[id] as Partial<IWorksheetData>;
    const {
      name = id,
      cellData = {},
      columnData = {},
      freeze,
      rowData,
      hidden,
      tabColor,
      zoomRatio = 1,
      showGridlines,
      custom,
    } = sheet;
    const own = (answers?.[id] ?? {}) as Matrix<ICellData>;
    const reach = (fills?.[id] ?? {}) as Matrix<IRange>;
    const at = <T>(matrix: Matrix<T>) => Object.keys(matrix).map(Number);
    const formulaAt = formulasOf(grid, id);
    const rows: (BookCell | undefined)[][] = [];
    for (const r of new Set([...at(cellData as Matrix<ICellData>), ...at(own)])) {
      const [line, answered] = [(cellData as Matrix<ICellData>)[r] ?? {}, own[r] ?? {}];
      const row: (BookCell | undefined)[] = [];
      for (const c of new Set([...Object.keys(line), ...Object.keys(answered)].map(Number))) {
        row[c] = cellOf(
          line[c],
          answered[c],
          { formula: formulaAt(r, c), kept: keptAt(line[c]) },
          reach[r]?.[c],
          saved.styles,
        );
      }
      rows[r] = Array.from(row);
    }
    const heights = heightsOf(rowData);
    const [hiddenRows, hiddenColumns] = [hiddenOf(rowData), hiddenOf(columnData)];
    const shown = workbook.getSheetBySheetId(id);
    const charts = shown ? chartsOf(shown.getSheet()).filter(({ series }) => series.length > 0) : [];
    return {
      name,
      rows: Array.from(rows),
      widths: Array.from({ length: Math.max(0, ...Object.keys(columnData).map((c) => Number(c) + 1)) }, (_, c) =>
        charactersOf((columnData as Record<number, { w?: number }>)[c]?.w),
      ),
      names: names.ofSheet.get(name) ?? {},
      headerRows: Math.max(0, freeze?.ySplit ?? 0),
      labelColumns: Math.max(0, freeze?.xSplit ?? 0),
      conditions: conditionsOf(rules[id] ?? []),
      ...(filters[id] ? { filter: filterOfSaved(filters[id]) } : {}),
      ...(hiddenRows.length > 0 ? { hiddenRows } : {}),
      ...(hiddenColumns.length > 0 ? { hiddenColumns } : {}),
      ...(hidden === BooleanNumber.TRUE ? { hidden: hiddenAs(custom) } : {}),
      ...(heights.length > 0 ? { heights } : {}),
      ...(tabColor ? { tab: tabColor } : {}),
      ...(zoomRatio === 1 ? {} : { zoom: zoomRatio }),
      ...(showGridlines === BooleanNumber.FALSE ? { plain: true as const } : {}),
      ...(charts.length > 0 ? { charts } : {}),
      ...(custom?.page ? { page: printedNow(custom.page as PageSetup, cellData) } : {}),
    };
  };
  const keptNames = saved.custom?.keptNames as Book['keptNames'];
  return {
    sheets: saved.sheetOrder.map(sheetOf),
    active: workbook.getActiveSheet().getSheetName(),
    values: names.values,
    scopes: names.scopes,
    ...(keptNames ? { keptNames } : {}),
  };
}
