import { type IWorkbookData, LifecycleService, LifecycleStages } from '@univerjs/core';
import { bindAll } from '../../../functions/bind.js';
import type { Metadata } from '../../../functions/metadata.js';
import type { StarterSheet } from '../../../src/sheets/sheet.js';
import { languageOf } from '../../texts/texts.js';
import { notationOf } from '../entry/notation.js';
import { answers } from '../formula/cellError.js';
import { bootGrid } from './boot.js';
import { mendMarkup } from './markup.js';
import { renewMessagesAfterMoves } from './moves.js';
import { numberLocale } from './numberLocale.js';
import { type OpenedWorkbook, openedWorkbook } from './opened.js';
import { readPasting } from './paste.js';
import { workbookOf } from './place.js';
import { completeStarter } from './sheets.js';
import { readTyping } from './typing.js';
import { sheetData, workbookData } from './workbookData.js';

interface Start {
  readonly container: HTMLElement;
  readonly saved: IWorkbookData | undefined;
  /** What a workbook starts with where nothing was saved. */
  readonly starter: StarterSheet;
  readonly language: string;
  tell(message: string): void;
}

const dark = () => window.matchMedia('(prefers-color-scheme: dark)');

async function builtMetadata(language: string): Promise<Metadata> {
  const name = languageOf(language) === 'de' ? 'functions.de.json' : 'functions.json';
  const response = await fetch(name);
  if (!response.ok) throw new Error(`${name} could not be read (${response.status}).`);
  return response.json();
}

/** The engine with a workbook in it, ready to be typed into. */
export async function startGrid({ container, saved, starter, language, tell }: Start): Promise<OpenedWorkbook> {
  const functions = { metadata: (await builtMetadata(language)).functions, bound: bindAll(answers) };
  const notation = notationOf(language);
  const data = saved ?? workbookData(sheetData(starter, 'first'));
  const grid = bootGrid(container, data, functions, dark().matches);
  if (!saved) completeStarter(grid, workbookOf(grid).getActiveSheet(), starter);
  if (notation.decimal === ',') workbookOf(grid).setNumfmtLocal(numberLocale(language));
  readTyping(grid, notation, {
    refuse: (where, typed, message) =>
      tell(`Not entered in ${where}: ${message.startsWith(typed) ? '' : `${typed} — `}${message}`),
    flag: (where, typed, message) => tell(`${typed} is entered in ${where}, but it will be refused: ${message}`),
  });
  readPasting(grid, container, notation, tell);
  renewMessagesAfterMoves(grid);
  mendMarkup(container);
  dark().addEventListener('change', ({ matches }) => grid.api.toggleDarkMode(matches));
  // Earlier it would take keys for a cell that cannot be seen or chosen yet.
  await grid.univer.__getInjector().get(LifecycleService).onStage(LifecycleStages.Rendered);
  return openedWorkbook(grid);
}
