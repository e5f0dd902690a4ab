import { CellValueType, type ICellData } from '@univerjs/core';
import { IEditorBridgeService } from '@univerjs/sheets-ui';
import { readEntry } from '../entry/entry.js';
import type { Writing } from '../entry/writing.js';
import type { Grid } from './boot.js';
import { entryCell } from './entryCell.js';
import { asOneStep } from './oneStep.js';
import { cellsOfText } from './pastedText.js';
import { activeCell, workbookOf } from './place.js';
import { canReach, growTo } from './room.js';

/** The engine marks what was copied inside this workbook; that needs no reading. */
const OWN_COPY = /data-copy-id/;

function pastedCell(text: string, writing: Writing, refused: string[]): ICellData {
  const entry = readEntry(text, writing);
  if (entry.kind !== 'refused') return entryCell(entry, text, undefined);
  refused.push(text);
  return { v: text, t: CellValueType.FORCE_STRING, f: null, si: null, p: null };
}

/** Reads pasted text in the user's notation. What cannot be read stays text, and is told of. */
export function readPasting(grid: Grid, container: HTMLElement, writing: Writing, tell: (message: string) => void) {
  const editor = grid.univer.__getInjector().get(IEditorBridgeService);
  const paste = (event: ClipboardEvent) => {
    const text = event.clipboardData?.getData('text/plain');
    const html = event.clipboardData?.getData('text/html') ?? '';
    if (!text || OWN_COPY.test(html) || editor.isVisible().visible) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    const rows = cellsOfText(text);
    const columns = rows.reduce((most, row) => Math.max(most, row.length), 0);
    const refused: string[] = [];
    const cells = rows.map((row) =>
      Array.from({ length: columns }, (_, c) => pastedCell(row[c] ?? '', writing, refused)),
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
    if (refused.length > 0) tell(writing.words.pastedAsText(refused.slice(0, 5).join('; ')));
  };
  // The engine listens deep inside; this has to come first.
  container.addEventListener('paste', paste, { capture: true });
}
