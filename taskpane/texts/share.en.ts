/** The words for sharing a sheet, in English. */
export const share = {
  heading: 'Share a sheet',
  intro:
    'Whoever opens the file without Powderbook sees errors in place of the answers. A copy with values shows them the figures: the sheet that is open now, with every formula replaced by its value. The sheet itself stays as it is.',
  button: 'Make a copy with values',
  ending: 'values',
  busy: 'Copying…',
  done: (name: string) => `The copy stands on the sheet ${name}.`,
};
