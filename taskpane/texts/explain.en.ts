/** The words that explain the selected cell, in English. */
export const explain = {
  heading: 'How this cell comes about',
  errorOrigin: 'Go to where this error begins',
  beginsHere: 'It begins in this cell.',
  result: 'Answer',
  method: 'Method and sources',
  leftOut: 'left out of the formula',
  typed: 'typed into the formula',
  from: (place: string) => `from ${place}`,
  goToInput: (label: string, place: string) => `${label}: go to ${place}`,
  size: (rows: string, columns: string) => `${rows} × ${columns} cells`,
  values: (all: string, odd: string) => `${all} cells; unusual or refused: ${odd}`,
  each: 'Each value',
  more: (count: string) => `and ${count} more`,
  judgement: { usual: 'usual', unusual: 'unusual', refused: 'refused', error: 'error' },
  /** Only the workbook can calculate a part of the formula. */
  unknown: {
    function: (what: string) => `${what} is calculated by the workbook alone; the pane cannot follow it.`,
    reference: (what: string) => `The pane cannot follow ${what}.`,
    operator: (what: string) => `“${what}” is calculated by the workbook alone; the pane cannot follow it.`,
    missing: (what: string) => `${what} is not found in the workbook, or has no cells of its own.`,
  },
};
