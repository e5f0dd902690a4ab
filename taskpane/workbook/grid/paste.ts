import { CellValueType, type ICellData } from '../engine/core.js';
import { servicesOf } from '../engine/services.js';
import { IEditorBridgeService, ISheetClipboardService } from '../engine/sheetsUi.js';
import { notationOfBlock } from '../entry/blockMark.js';
import { readEntry } from '../entry/entry.js';
import { written } from '../entry/notation.js';
import { readNumber } from '../entry/number.js';
import type { Writing } from '../entry/writing.js';
import type { Grid } from './boot.js';
import { entryCell } from './entryCell.js';
import { asOneStep } from './oneStep.js';
import { cellsOfText } from './pastedText.js';
import { activeCell, workbookOf } from './place.js';
import { canReach, growTo } from './room.js';

/** The engine's mark on what it copied. */
const COPY = /data-copy-id="([^"\s]+)"/;

function pastedCell(text: string, writing: Writing, block: Writing, refused: string[]): ICellData {
  // Formulas have separators of their own that settle how they are read.
  const entry = readEntry(text, text.startsWith('=') ? writing : block);
  if (entry.kind !== 'refused') return entryCell(entry, text, undefined);
  refused.push(text);
  return { v: text, t: CellValueType.FORCE_STRING, f: null, si: null, p: null };
}

/** How the numbers of the block were understood, where somebody may have meant something else. */
function understanding({ notation, shownBy, open }: ReturnType<typeof notationOfBlock>, writing: Writing): string[] {
  if (shownBy !== undefined) return [writing.words.pastedMark(notation.decimal, shownBy)];
  const entry = open === undefined ? undefined : readNumber(open, writing);
  if (open === undefined || entry?.kind !== 'number') return [];
  const value = entry.percent ? `${written(entry.value * 100, notation)} %` : written(entry.value, notation);
  return [writing.words.pastedOpen(open, value, notation.decimal)];
}

/** Reads pasted text in the user's notation. What cannot be read stays text, and is told of. */
export function readPasting(grid: Grid, container: HTMLElement, writing: Writing, tell: (message: string) => void) {
  const injector = servicesOf(grid.univer);
  const editor = injector.get(IEditorBridgeService);
  /** What was copied inside this workbook needs no reading. Only what the engine kept itself counts: marks can be forged. */
  const copiedHere = (html: string) => {
    const id = COPY.exec(html)?.[1];
    return id !== undefined && injector.get(ISheetClipboardService).copyContentCache().get(id) !== undefined;
  };
  const paste = (event: ClipboardEvent) => {
    const text = event.clipboardData?.getData('text/plain');
    const html = event.clipboardData?.getData('text/html') ?? '';
    if (editor.isVisible().visible || copiedHere(html) || (!text && !COPY.test(html))) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    if (!text) return;
    const rows = cellsOfText(text);
    const columns = rows.reduce((most, row) => Math.max(most, row.length), 0);
    const refused: string[] = [];
    const settled = notationOfBlock(rows.flat(), writing.notation);
    const block = { ...writing, notation: settled.notation };
    const cells = rows.map((row) =>
      Array.from({ length: columns }, (_, c) => pastedCell(row[c] ?? '', writing, block, refused)),
    );
    const sheet = workbookOf(grid).getActiveSheet();
    const corner = activeCell(grid);
    const extent = { rows: corner.getRow() + rows.length, columns: corner.getColumn() + columns };
    if (!canReach(extent)) {
      tell(writing.words.doesNotFit(String(rows.length), String(columns)));
      return;
    }
    asOneStep(grid, () => {
      growTo(sheet, extent);
      const target = sheet.getRange(corner.getRow(), corner.getColumn(), rows.length, columns);
      target.setValues(cells);
      target.activate();
    });
    const told = understanding(settled, writing);
    if (refused.length > 0) told.push(writing.words.pastedAsText(refused.slice(0, 5).join('; ')));
    if (told.length > 0) tell(told.join(' '));
  };
  // The engine listens deep inside; this has to come first.
  container.addEventListener('paste', paste, { capture: true });
}
