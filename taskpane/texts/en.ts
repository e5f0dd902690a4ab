import { charts } from './charts.en.js';
import { check } from './check.en.js';
import { entry } from './entry.en.js';
import { explain } from './explain.en.js';
import { format } from './format.en.js';
import { host } from './host.en.js';
import { open } from './open.en.js';
import { picture } from './picture.en.js';
import { save } from './save.en.js';
import { share } from './share.en.js';
import { textNumbers } from './textNumbers.en.js';
import { workbook } from './workbook.en.js';

/** Every word of the pane that no declaration holds, in English. Its shape is what another language must fill. */
export const en = {
  /** A text that a declaration holds in English, in the language of the pane. */
  say: (english: string): string => english,
  pane: 'Powderbook',
  tabs: { functions: 'Functions', check: 'Check', sheets: 'Sheets', help: 'Help' },
  sections: 'Parts of the pane',
  outside:
    'This page belongs inside Excel: open Powderbook there from the ribbon. In a browser on its own, use workbook.html, the embedded workbook.',
  failed: (detail: string) => `The workbook could not do that: ${detail}`,
  selected: {
    above: 'Cell and charts',
    heading: 'Selected cell',
    none: 'No cell is selected yet.',
    blank: 'blank',
    yes: 'TRUE',
    no: 'FALSE',
    formula: 'Formula',
    kept: (formula: string) =>
      `The last value from the file stands here: the grid cannot calculate ${formula}, and nothing you change changes it.`,
    filledBy: (address: string) => `It stands in ${address} and fills this cell too.`,
    value: 'Value',
    refused: 'Refused',
    noAnswer: 'No answer',
    explain: (id: string) => `Explain ${id}`,
  },
  explain,
  picture,
  check,
  charts,
  entry,
  format,
  host,
  open,
  save,
  share,
  textNumbers,
  workbook,
  list: {
    search: 'Search functions',
    hint: 'A name, a word, or a question: how long does my run last?',
    count: (shown: string, all: string) => `${shown} of ${all} functions`,
    nothing: 'No function matches. Try another word, or fewer letters.',
    clear: 'Show all functions',
  },
  card: {
    back: 'All functions',
    inputs: 'Inputs',
    range: 'Where the range comes from',
    preset: (value: string) => `preset ${value}`,
    optional: 'may be left blank',
    asGiven: 'any unit',
    limits: (least: string, most: string) => `limits ${least} to ${most}`,
    usual: (from: string, to: string) => `usual ${from} to ${to}`,
    isUsual: 'usual',
    isUnusual: 'unusual',
    isRefused: 'refused',
    words: 'One of',
    unfit: (word: string, reason: string) => `Not ${word}: ${reason}`,
    unfitOption: (word: string) => `${word} (does not fit)`,
    oneALine: 'One value on each line.',
    method: 'Method',
    sources: 'Sources',
    cautions: 'Caution',
  },
  result: {
    example: 'Worked example',
    yours: 'With your values',
    table: 'Answer as a table',
    backToExample: 'Back to the example',
    laidOut: 'With the inputs laid out from cell A1, as the button below writes them.',
    refused: 'Refused',
    noAnswer: 'No answer (#N/A)',
    incomplete: 'An input above needs another value.',
  },
  insert: {
    button: 'Put this into the sheet',
    where: 'Writes the inputs with their labels and units, and the formula, from the selected cell on.',
    below: (rows: string, columns: string) =>
      `The answer spills over ${rows} × ${columns} cells below the inputs; the block keeps them free.`,
    beside: (rows: string, columns: string) =>
      `The answer spills over ${rows} × ${columns} cells to the right of the inputs; the block keeps them free.`,
    busy: 'Writing…',
    done: (address: string) => `Written into ${address}.`,
    anyway: 'Write anyway',
    anywayHint: 'Whatever stands in these cells is then replaced.',
    correct: 'Nothing was written: correct the marked input first.',
  },
  sheets: {
    intro: 'Ready sheets with an invented brewery’s figures, to be replaced by yours. Each becomes a new tab.',
    insert: 'Insert',
    insertNamed: (name: string) => `Insert ${name}`,
    insertEmpty: 'Begin without figures',
    insertEmptyNamed: (name: string) => `Begin without figures: ${name}`,
    busy: 'Inserting…',
    done: (name: string) => `The sheet ${name} was inserted.`,
  },
  help: {
    errors: 'What an error in a cell means',
    error: {
      '#VALUE!': 'An input was refused. The sentence names the input, its limits, the unit and what was given.',
      '#N/A':
        'No answer exists, and the sentence says why; or the place lies outside one of the ranges given, as when a column of 5 meets a column of 3.',
      '#BUSY!': 'Excel is still calculating, or the functions are still loading. It passes by itself.',
      '#NAME?':
        'The name is not known: it is misspelt, or the functions are not loaded. In Excel, open Powderbook from the ribbon, then recalculate with Ctrl+Alt+F9. Whoever has the file without the add-in sees this too.',
      '#CALC!': 'Excel was handed something that it cannot put into cells, such as an empty range.',
      '#SPILL!': 'The answer needs several cells, and something stands in one of them. Clear or move it.',
      '#DIV/0!': 'An input cell shows this error, and the function hands it on: look at that cell first.',
      '#NUM!': 'An input cell shows this error, and the function hands it on: look at that cell first.',
      '#CYCLE!':
        'The formula reads its own answer, directly or through other cells, or reads a cell that does. Lead one of them elsewhere.',
      '#REF!': 'An input cell shows this error, and the function hands it on: look at that cell first.',
    },
    busy: 'Why a cell says #BUSY!',
    busyText:
      'Excel calculates add-in functions beside its own and shows #BUSY! until they answer, mostly for less than a second. A chain of cells that wait for each other takes longer at each link: one formula over a whole column is quicker. Where it stays for a minute, open Powderbook from the ribbon and recalculate with Ctrl+Alt+F9. The embedded workbook has no such moment.',
    loading: 'Loading Powderbook into Excel',
    loadingText:
      'Excel asks for the file manifest.xml once. On the web: Add-ins, More Add-ins, My Add-ins, Upload My Add-in. In a company the administrator hands it out from the admin centre. After that the button in the ribbon opens this pane, and the functions are there while a workbook is open; a workbook that shows #NAME? has been opened before they were loaded.',
    sharing: 'Passing a workbook on',
    sharingText:
      'Whoever lacks the add-in sees the last figures until the sheet is calculated anew, and #NAME? from then on. Under Sheets, “Make a copy with values” makes a copy that shows the figures everywhere.',
    whereExcel: 'In Excel the sentence shows when you point at the mark beside the cell.',
    whereEmbedded: 'The sentence stands at the top of this pane when you select the cell.',
    blank: 'Blank cells and 0',
    blankText:
      'A blank cell counts as 0, since some workbooks hand it over that way. Where 0 lies outside the limits the input is refused, and the sentence says “blank or 0”. In a plan a blank figure is missing unless its label has a preset: type a price of nothing as 0. An input that is left out of the formula takes its preset.',
    shares: 'Shares and percentages',
    sharesText: 'Moisture and other shares are fractions: write 65 % or 0.65. The number 65 is refused.',
    limits: 'Limits and usual ranges',
    limitsText:
      'A value outside the limits is refused. A value outside the usual range is calculated all the same: it is worth a second look, no more.',
    columns: 'Whole columns',
    columnsText:
      'Give a column instead of one cell, and the answers spill down beside it. One formula over a column is much faster than a column of formulas.',
    cautions: 'Cautions',
    about: 'About Powderbook',
    aboutText:
      'Copyright 2026 the Powderbook contributors, under the MIT licence. It calculates on this computer and sends nothing anywhere. In Excel it works through Microsoft’s office.js, passed on unchanged under its own terms; Microsoft is not responsible for maintaining, updating or supporting Powderbook.',
    licences: 'Licences of all its parts',
  },
};
