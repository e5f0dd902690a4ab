import { bindAll } from '../../../functions/bind.js';
import type { Metadata } from '../../../functions/metadata.js';
import type { StarterSheet } from '../../../src/sheets/sheet.js';
import { languageOf, type Texts } from '../../texts/texts.js';
import type { Left } from '../calculation/elsewhere.js';
import { type IWorkbookData, LifecycleService, LifecycleStages } from '../engine/core.js';
import { keepRulesOfEmptiedCells } from '../engine/mends/clearing.js';
import { takeCompletionsOnPurpose } from '../engine/mends/completion.js';
import { leaveGoingSheet } from '../engine/mends/goingSheet.js';
import { mendMarkup } from '../engine/mends/markup.js';
import { closeNameListOnChoice } from '../engine/mends/nameList.js';
import { mendSpilledFormula } from '../engine/mends/spilledFormula.js';
import { servicesOf } from '../engine/services.js';
import { loadLocale } from '../engine/words/locale.js';
import { notationOf } from '../entry/notation.js';
import { answers } from '../formula/cellError.js';
import { growToTypedAddress } from './addressBox.js';
import { bootGrid } from './boot.js';
import { copyNotes } from './copiedNotes.js';

import { markMoves } from './kept.js';
import { addKeys } from './keys.js';
import { renewMessagesAfterMoves } from './moves.js';
import { addNoteToMenu, markNotes, selectedNote } from './notes.js';
import { numberLocale } from './numberLocale.js';
import { type OpenedWorkbook, openedWorkbook } from './opened.js';
import { readPasting } from './paste.js';
import { address, workbookOf } from './place.js';
import { completeStarter } from './sheets.js';
import { showNumbers } from './showing.js';
import { forgetSteps } from './steps.js';
import { markTextNumbers } from './textNumbers.js';
import type { Tools } from './tools.js';
import { readTyping } from './typing.js';
import { type CellPlace, untilWritten } from './untilWritten.js';
import { fitted, sheetData, workbookData, zoomFor } from './workbookData.js';

interface Start {
  readonly container: HTMLElement;
  readonly saved: IWorkbookData | undefined;
  /** Whether anything is calculated; otherwise formulas keep the answers that they have. */
  readonly calculates: boolean;
  /** What a workbook starts with where nothing was saved. */
  readonly starter: StarterSheet;
  readonly language: string;
  readonly words: Texts;
  /** Says something; what it gives back takes it away again. */
  tell(message: string): () => void;
  /** Opens the choice of number formats. */
  openFormats(): void;
}

const dark = () => window.matchMedia('(prefers-color-scheme: dark)');

async function builtMetadata(language: string): Promise<Metadata> {
  const name = languageOf(language) === 'de' ? 'functions.de.json' : 'functions.json';
  const response = await fetch(name);
  if (!response.ok) throw new Error(`${name} could not be read (${response.status}).`);
  return response.json();
}

const addressOf = ({ row, column }: CellPlace) => address(row, column);

/** What could not be calculated to its end, as a sentence. */
function leftWords(left: Left, words: Texts['workbook']['left']): string {
  if (left.kind === 'all') return words.all;
  if (left.kind === 'rules') return words.rules(left.sheet);
  return words[left.kind](`${left.sheet}!${address(left.row, left.column)}`);
}

/** The engine with a workbook in it, ready to be typed into. */
export async function startGrid({
  container,
  saved,
  calculates,
  starter,
  language,
  words,
  tell,
  openFormats,
}: Start): Promise<OpenedWorkbook> {
  const [{ functions: metadata }, locale] = await Promise.all([builtMetadata(language), loadLocale(language)]);
  const functions = { metadata, bound: bindAll(answers) };
  const writing = { notation: notationOf(language), words: words.entry };
  function left(what: Left) {
    const withdraw = tell(leftWords(what, words.workbook.left));
    if ('row' in what) {
      const sheet = workbookOf(grid).getSheetByName(what.sheet)?.getSheetId();
      if (sheet) untilWritten(grid, { ...what, sheet }, withdraw);
    } else if (what.kind === 'all') {
      const stop = grid.calculation.watch((state) => {
        if (state === 'stopped') return;
        stop();
        withdraw();
      });
    }
  }
  const data =
    saved ??
    workbookData({
      ...sheetData(fitted(starter, container.clientWidth), 'first'),
      zoomRatio: zoomFor(starter, container.clientWidth),
    });
  const grid = bootGrid({ container, data, functions, locale, darkMode: dark().matches, calculates, left });
  const about = (place: CellPlace, message: string) => untilWritten(grid, place, tell(message));
  if (!saved) completeStarter(grid, workbookOf(grid).getActiveSheet(), starter);
  if (writing.notation.decimal === ',') workbookOf(grid).setNumfmtLocal(numberLocale(language));
  readTyping(grid, writing, {
    refuse: (place, typed, reason) =>
      about(place, words.entry.refused(addressOf(place), reason.startsWith(typed) ? reason : `${typed} — ${reason}`)),
    flag: (place, ...what) => about(place, words.entry.flagged(addressOf(place), ...what)),
  });
  showNumbers(grid, writing.notation);
  markTextNumbers(grid, writing);
  markNotes(grid);
  readPasting(grid, container, writing, tell);
  renewMessagesAfterMoves(grid);
  markMoves(grid);
  keepRulesOfEmptiedCells(grid.univer);
  leaveGoingSheet(grid.univer);
  takeCompletionsOnPurpose(grid.univer);
  mendSpilledFormula(grid.univer);
  mendMarkup(container, words);
  growToTypedAddress(grid, container, (...most) => tell(words.entry.tooFar(...most)));
  dark().addEventListener('change', ({ matches }) => grid.api.toggleDarkMode(matches));
  // Earlier it would take keys for a cell that cannot be seen or chosen yet.
  await servicesOf(grid.univer).get(LifecycleService).onStage(LifecycleStages.Rendered);
  forgetSteps(grid);
  const workbook = openedWorkbook(grid, container, language, writing, words.charts);
  const use = (work: (tools: Tools) => void) => () =>
    void workbook.tools().then(work, () => tell(words.format.notLoaded));
  const note = () => workbook.notes.ask(selectedNote(grid));
  addKeys(grid, container, language, {
    formats: openFormats,
    find: use((tools) => tools.find()),
    replace: use((tools) => tools.replace()),
    note,
  });
  copyNotes(grid);
  addNoteToMenu(grid, words.workbook.note.menu, note);
  closeNameListOnChoice(grid.univer, workbook.focus);
  return workbook;
}
