/** The words of the embedded workbook's own page, around grid and pane, in English. */
export const workbook = {
  loading: 'The grid is loading. The functions can be read meanwhile.',
  gridFailed: (detail: string) => `The grid could not start: ${detail}`,
  cancel: 'Cancel',
  close: 'Close',
  note: {
    menu: 'Note…',
    title: (address: string) => `Note on ${address}`,
    save: 'Save note',
    remove: 'Delete note',
  },
  saving: {
    loading: 'Opening the workbook …',
    saving: 'Saving …',
    saved: 'Saved in this browser',
    failed: 'Not saved: this browser keeps nothing for this page. Copy what you need before you close it.',
    elsewhere: 'Read only: another tab has this workbook and saves it.',
  },
  startAfresh: {
    button: 'Start afresh',
    title: 'Start afresh?',
    text: 'A new workbook with the dosing sheet takes the place of this one. This one is kept, and “Bring back” exchanges the two.',
  },
  bringBack: {
    button: 'Bring back',
    title: 'Bring back the workbook from before?',
    text: 'It takes the place of this one. This one is kept in turn, and “Bring back” exchanges the two again.',
  },
  print: 'Print',
  takeOver: 'Take over here',
  takenOver: 'Another tab has taken over the workbook. Here it can only be read.',
  storage: 'The browser’s storage did not answer. Everything stays as it is.',
  keptAside: (key: string) =>
    `The saved workbook could not be opened. It is kept in this browser under “${key}”, and a new one was started.`,
  notKeptAside: 'The saved workbook could not be opened or moved aside. A new one was started, and it is not saved.',
  trialLeft: 'The workbook from the file kept the page too busy. The one before is open again; nothing in it is lost.',
  trialCareful:
    'The last start never came so far as to answer. This one calculates nothing, so that you can put right what it was, or bring back the workbook before. “Calculate” calculates, and so does opening the page again.',
  left: {
    formula: (where: string) =>
      `The formula in ${where} did not come to an end and was stopped. It stays as it stands, with its last answer where it had one; change it, and it is calculated again.`,
    tooLarge: (where: string) =>
      `The formula in ${where} asks for more cells than are calculated at once. It stays as it stands, with its last answer where it had one.`,
    rules: (sheet: string) =>
      `The rules and conditional formats of ${sheet} did not come to an end and were stopped. All else is calculated.`,
    all: 'The workbook keeps the calculation too busy, so it was stopped. Formulas keep their last answers until you choose “Calculate”; entries are taken and saved.',
  },
  calculation: {
    busy: { says: 'Calculating …', button: 'Stop' },
    stopped: { says: 'Nothing is calculated.', button: 'Calculate' },
  },
  printedEarly: 'The calculation had not ended: figures may be missing or older than the inputs.',
  steps: { back: 'Undo', forth: 'Redo' },
  parts: { heading: 'Shown part', sheet: 'Sheet', functions: 'Functions', width: 'Width of the functions' },
  keys: 'moves between sheet and functions',
  tabs: {
    heading: 'Sheets',
    add: 'Add sheet',
    rename: 'Rename',
    name: 'Name of the sheet',
    delete: 'Delete',
    deleteTitle: (name: string) => `Delete the sheet ${name}?`,
    deleteText: 'What stands on it is gone then, and formulas on other sheets that read from it will show an error.',
    more: 'More',
    left: 'Move to the left',
    right: 'Move to the right',
    hide: 'Hide',
    unhide: 'Show a hidden sheet',
    colour: 'Colour of the tab',
    newName: (number: string) => `Sheet ${number}`,
    notRenamed: (reason: string) => `Not renamed: ${reason}`,
    noName: 'A sheet needs a name.',
    longName: (most: string) => `A sheet’s name has at most ${most} characters.`,
    markInName: (marks: string) => `A sheet’s name cannot have any of ${marks} in it.`,
    takenName: (name: string) => `Another sheet is called ${name}.`,
  },
  grid: {
    notifications: 'Notifications of the grid',
    moreNotifications: (part: string) => `Notifications of the grid, part ${part}`,
    address: 'Address or name of the cell',
    names: 'Names in this workbook',
  },
};
