import type { CellContent } from '../../host/host.js';
import { CellValueType, type ICellData, type Nullable } from '../engine/core.js';
import { styleOf } from './styles.js';

interface Written {
  readonly text?: string;
  readonly number?: number;
  readonly formula?: string;
  readonly format?: string;
  readonly style?: Parameters<typeof styleOf>[0];
  readonly align?: 'right' | 'indented';
}

/** Text that would be taken for a formula or a sign when it is edited again. */
const LIKE_A_FORMULA = /^[=+\-@]/;

export function textCell(text: string): ICellData {
  return { v: text, t: LIKE_A_FORMULA.test(text) ? CellValueType.FORCE_STRING : CellValueType.STRING };
}

/** One cell as the engine keeps it. */
export function cellData({ text, number, formula, format, style, align }: Written): ICellData {
  const look = styleOf(style, format, align);
  const content: ICellData =
    formula !== undefined
      ? { f: formula }
      : number !== undefined
        ? { v: number, t: CellValueType.NUMBER }
        : text
          ? textCell(text)
          : {};
  return look ? { ...content, s: look } : content;
}

/** The text of a cell whose letters have looks of their own. */
export const richText = (cell: Nullable<ICellData>): string | undefined =>
  cell?.p?.body?.dataStream.replace(/\r\n$/, '');

/** A cell's content as the other parts of the page know it: the engine keeps logical values as 0 and 1. */
export function contentOf(cell: Nullable<ICellData>): CellContent {
  if (cell?.p) return richText(cell) ?? null;
  if (cell?.v === null || cell?.v === undefined || cell.v === '') return null;
  if (cell.t === CellValueType.BOOLEAN) return Number(cell.v) === 1;
  if (cell.t === CellValueType.NUMBER) return Number(cell.v);
  return cell.v;
}

/**
 * Whether a cell is calculated. A formula that was copied down stands in one cell only (`f`); the others name it by an
 * id (`si`) and read it from where they stand.
 */
export const hasFormula = (cell: Nullable<ICellData>): boolean => Boolean(cell?.f || cell?.si);
