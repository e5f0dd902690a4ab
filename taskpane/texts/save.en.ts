/** The words for saving the workbook as an .xlsx file, in English. */
export const save = {
  button: 'Save as .xlsx',
  busy: 'Writing…',
  file: 'Powderbook',
  saved:
    'The file was given to the browser, which keeps it with its downloads. Its formulas calculate in Excel with the add-in; without it, and in other programs, the last answers stand.',
  tooLarge: (reason: string) =>
    `The file was given to the browser, but this page would not open it again: ${reason} Excel opens it. Your workbook here is as it was.`,
  failed: 'No file was written. The workbook is as it was.',
};
