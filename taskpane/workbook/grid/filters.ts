import type { FilteredOut } from '../calculation/signals.js';
import { BooleanNumber, type IWorkbookData } from '../engine/core.js';
import type { IAutoFilter, ICustomFilter, IFilterColumn } from '../engine/filter.js';
import { deserializeRangeWithSheet, serializeRange } from '../engine/formula.js';
import type { Book } from '../xlsx/book.js';
import type { Criterion, Filter, FilterCondition } from '../xlsx/filter.js';

/** The name under which the engine keeps the filters of a workbook, by sheet. */
export const FILTERS = 'SHEET_FILTER_PLUGIN';
export type SavedFilters = Readonly<Record<string, IAutoFilter>>;

/** A colour as the engine's filters name it: `rgb(255,217,138)`. */
const rgbOf = (colour: string): string =>
  `rgb(${[1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16)).join(',')})`;

const hexOf = (rgb: string): string =>
  `#${(rgb.match(/\d+/g) ?? [])
    .slice(0, 3)
    .map((one) => Number(one).toString(16).padStart(2, '0'))
    .join('')}`;

const condition = ({ comparison, value }: FilterCondition): ICustomFilter =>
  ({ val: value, ...(comparison ? { operator: comparison } : {}) }) as ICustomFilter;

function asColumn(criterion: Criterion): Omit<IFilterColumn, 'colId'> {
  switch (criterion.kind) {
    case 'values':
      return { filters: { filters: [...criterion.values], ...(criterion.blank ? { blank: true } : {}) } };
    case 'conditions': {
      const [first, second] = criterion.conditions.map(condition) as [ICustomFilter, ICustomFilter?];
      const and = criterion.both ? { and: BooleanNumber.TRUE as const } : {};
      return { customFilters: { ...and, customFilters: second ? [first, second] : [first] } };
    }
    case 'fills':
      return { colorFilters: { cellFillColors: criterion.colours.map((one) => (one ? rgbOf(one) : null)) } };
    case 'inks':
      return { colorFilters: { cellTextColors: criterion.colours.map(rgbOf) } };
  }
}

/** The filters of a file as the engine keeps them. */
export function savedFilters({ sheets }: Book, ids: readonly string[]): SavedFilters {
  const listed = sheets.flatMap(({ filter }, number): [string, IAutoFilter][] => {
    if (!filter) return [];
    const saved = {
      ref: deserializeRangeWithSheet(filter.range).range,
      filterColumns: filter.columns.map(({ column, criterion }) => ({ colId: column, ...asColumn(criterion) })),
      ...(filter.hidden ? { cachedFilteredOut: [...filter.hidden] } : {}),
    };
    return [[ids[number] as string, saved]];
  });
  return Object.fromEntries(listed);
}

function criterionOf({ filters, customFilters, colorFilters }: IFilterColumn): Criterion | undefined {
  if (filters) return { kind: 'values', values: filters.filters ?? [], blank: filters.blank === true };
  if (customFilters) {
    const conditions = customFilters.customFilters.map(({ val, operator }) => ({
      value: String(val),
      ...(operator ? { comparison: operator as FilterCondition['comparison'] & string } : {}),
    }));
    return { kind: 'conditions', conditions, both: customFilters.and === BooleanNumber.TRUE };
  }
  if (colorFilters?.cellFillColors)
    return { kind: 'fills', colours: colorFilters.cellFillColors.map((one) => (one ? hexOf(one) : undefined)) };
  return colorFilters?.cellTextColors && { kind: 'inks', colours: colorFilters.cellTextColors.map(hexOf) };
}

/** A filter of the grid as a file takes it. */
export function filterOfSaved({ ref, filterColumns = [], cachedFilteredOut = [] }: IAutoFilter): Filter {
  return {
    range: serializeRange(ref),
    columns: filterColumns.flatMap((one) => {
      const criterion = criterionOf(one);
      return criterion ? [{ column: one.colId, criterion }] : [];
    }),
    hidden: [...cachedFilteredOut].sort((one, other) => one - other),
  };
}

/** The rows that filters of a saved workbook hide, by the sheets' ids. */
export function filteredOutOf({ resources = [] }: Pick<IWorkbookData, 'resources'>): FilteredOut {
  const saved = resources.find(({ name }) => name === FILTERS)?.data;
  const filters = saved ? (JSON.parse(saved) as SavedFilters) : {};
  return Object.fromEntries(
    Object.entries(filters).flatMap(([id, { cachedFilteredOut: out }]) => (out?.length ? [[id, out]] : [])),
  );
}
