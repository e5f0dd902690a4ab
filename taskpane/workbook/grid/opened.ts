import type { StarterSheet } from '../../../src/sheets/sheet.js';
import type { Block, Cells, Selection, Turned } from '../../host/host.js';
import type { RangeReference, Reference } from '../../host/reference.js';
import { Refusal } from '../../host/refusal.js';
import type { WorkbookContents } from '../../host/workbookContents.js';
import type { Texts } from '../../texts/texts.js';
import type { Calculation } from '../calculation/standing.js';
import type { IWorksheetData } from '../engine/core.js';
import { servicesOf } from '../engine/services.js';
import { ILayoutService } from '../engine/ui.js';
import type { Writing } from '../entry/writing.js';
import type { Book } from '../xlsx/book.js';
import { type Autosave, askBeforeLeaving, autosave, type SaveState } from './autosave.js';
import type { BootedGrid } from './boot.js';
import { copyWithValues } from './copyWithValues.js';
import { type Formatting, formatting } from './format.js';
import { goTo } from './goTo.js';
import type { AskedNote } from './notes.js';
import { type PrintedSheet, pageOfSheet } from './pageOfSheet.js';
import { read } from './read.js';
import { readAll } from './readAll.js';
import { makeReadOnly } from './readOnly.js';
import { readSelection, watchSelection } from './selection.js';
import { type SheetCharts, sheetCharts } from './sheetCharts.js';
import { insertNamed, insertStarter } from './sheets.js';
import { type Steps, stepsOf } from './steps.js';
import { type Summary, watchSummary } from './summary.js';
import { type SheetTabs, sheetTabs } from './tabs.js';
import { turnIntoNumbers } from './textNumbers.js';
import { bookOfGrid } from './toBook.js';
import { loadTools, type Tools } from './tools.js';
import { fitted, zoomFor } from './workbookData.js';
import { writeBlock } from './write.js';
import { type Zoom, zoomOf } from './zoom.js';

/** All that the rest of the page does with the open workbook, so that it needs nothing of the engine itself. */
export interface OpenedWorkbook {
  readonly tabs: SheetTabs;
  readonly steps: Steps;
  readonly calculation: Calculation;
  readonly format: Formatting;
  /** What finds, sorts and filters; it loads when it is first asked for. */
  tools(): Promise<Tools>;
  /** How large the shown sheet is drawn, where 1 is the usual size. */
  readonly zoom: Zoom;
  readonly charts: SheetCharts;
  readonly notes: {
    /** Asks for a note, unless nothing can be changed. */
    ask(note: AskedNote): void;
    onAsk(listener: (note: AskedNote) => void): void;
  };
  onSummary(listener: (summary: Summary) => void): () => void;
  /** The shown sheet as it is printed, and whether its figures are those of its present inputs. */
  page(): PrintedSheet & { readonly upToDate: boolean };
  selection(): Selection;
  onSelection(listener: (selection: Selection) => void): () => void;
  read(references: readonly Reference[]): readonly (Cells | undefined)[];
  write(block: Block, overwrite: boolean): { readonly address: string };
  insertSheet(starter: StarterSheet): void;
  /** Puts a sheet that was read from a text file behind the others, named as the file is. */
  insertText(file: string, sheet: Partial<IWorksheetData>): void;
  readAll(): WorkbookContents;
  turnIntoNumbers(place?: RangeReference): Turned;
  goTo(reference: Reference): void;
  copyWithValues(ending: string): { readonly name: string };
  /** The workbook as it stands, for a file. */
  book(): Book;
  autosave(tell: (state: SaveState) => void): Autosave;
  /** For a workbook that cannot be saved: once anything was changed, the browser asks before the page is left. */
  askBeforeLeaving(): void;
  /** Another page writes: what is being typed is entered, and nothing can be changed any more. */
  makeReadOnly(): Promise<void>;
  /** Gives the keys to the cells. */
  focus(): void;
}

export function openedWorkbook(
  grid: BootedGrid,
  container: HTMLElement,
  language: string,
  writing: Writing,
  words: Texts['charts'],
): OpenedWorkbook {
  let tools: Promise<Tools> | undefined;
  let readOnly = false;
  let asked: (note: AskedNote) => void = () => {};
  const changing = <T>(change: () => T): T => {
    if (readOnly) throw new Refusal((words) => words.readOnly);
    return change();
  };
  return {
    tabs: sheetTabs(grid),
    steps: stepsOf(grid),
    calculation: grid.calculation,
    format: formatting(grid, language),
    tools: () => {
      tools ??= loadTools(grid, language);
      return tools;
    },
    zoom: zoomOf(grid),
    charts: sheetCharts(grid, container, words, changing),
    notes: {
      ask: (note) => {
        if (!readOnly) asked(note);
      },
      onAsk: (listener) => {
        asked = listener;
      },
    },
    onSummary: (listener) => watchSummary(grid, listener),
    page: () => ({ ...pageOfSheet(grid), upToDate: grid.calculation.upToDate() }),
    selection: () => readSelection(grid),
    onSelection: (listener) => watchSelection(grid, listener),
    read: (references) => read(grid, references),
    write: (block, overwrite) => changing(() => writeBlock(grid, block, overwrite)),
    insertSheet: (starter) =>
      changing(() => {
        const { clientWidth } = container;
        insertStarter(grid, fitted(starter, clientWidth)).zoom(zoomFor(starter, clientWidth));
      }),
    insertText: (file, sheet) => changing(() => insertNamed(grid, file, sheet)),
    readAll: () => readAll(grid),
    turnIntoNumbers: (place) => changing(() => turnIntoNumbers(grid, writing, place)),
    goTo: (reference) => goTo(grid, reference),
    copyWithValues: (ending) => changing(() => copyWithValues(grid, ending)),
    book: () => bookOfGrid(grid),
    autosave: (tell) => autosave(grid, grid.calculation.first, tell),
    askBeforeLeaving: () => askBeforeLeaving(grid),
    makeReadOnly: () => {
      readOnly = true;
      return makeReadOnly(grid);
    },
    focus: () => servicesOf(grid.univer).get(ILayoutService).focus(),
  };
}
