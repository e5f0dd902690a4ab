import type { Texts } from './dictionary.js';

/** The words for saving the workbook as an .xlsx file, in German. */
export const save: Texts['save'] = {
  button: 'Als .xlsx speichern',
  busy: 'Wird geschrieben…',
  file: 'Powderbook',
  saved:
    'Die Datei ist dem Browser übergeben, der sie bei seinen Downloads ablegt. Ihre Formeln rechnen in Excel mit dem Add-in; ohne es, und in anderen Programmen, stehen die letzten Ergebnisse.',
  tooLarge: (reason) =>
    `Die Datei ist dem Browser übergeben, aber diese Seite würde sie nicht wieder öffnen: ${reason} Excel öffnet sie. Ihre Arbeitsmappe hier ist, wie sie war.`,
  failed: 'Es wurde keine Datei geschrieben. Die Arbeitsmappe ist, wie sie war.',
};
