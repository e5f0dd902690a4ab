/** The words for saving the workbook as an .xlsx file, in English. */
export const save = {
  button: 'Save as .xlsx',
  busy: 'Writing…',
  file: 'Powderbook',
  tooLarge: (reason: string) =>
    `The file was given to the browser, but this page would not open it again: ${reason} Excel opens it. Your workbook here is as it was.`,
  /** The name of a file that holds values in place of our formulas. */
  valuesFile: (name: string) => `${name} (values)`,
  confirm: 'Save',
  title: 'What should the file hold?',
  ways: {
    formulas: {
      label: 'The workbook with all its formulas',
      sentence: 'For Excel with Powderbook, and for opening here again.',
    },
    values: {
      label: 'The workbook with values in place of Powderbook’s formulas',
      sentence:
        'For anyone without Powderbook, in any spreadsheet program: its answers stand as figures, all other formulas go on calculating.',
    },
    sheet: {
      label: 'The shown sheet alone, in the same way',
      sentence: 'What it reads from other sheets stands as figures, too.',
    },
  },
  saved: {
    formulas:
      'The file was given to the browser, which keeps it with its downloads. Its formulas calculate in Excel with Powderbook. Without it, Excel shows the last answers until it calculates anew; other programs show #NAME? where an answer fills several cells. For them, save it with values.',
    values:
      'The file was given to the browser, which keeps it with its downloads. Powderbook’s answers are figures in it, which do not follow when others change; the formulas of spreadsheet programs are formulas still.',
  },
  /** What such a file has no place for. */
  coloursLeft:
    'A filter by several colours at once has no place in such a file: its rows are hidden there, but what it asks for is not kept.',
  failed: 'No file was written. The workbook is as it was.',
};
