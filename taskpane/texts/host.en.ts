/** Why a workbook did not do what the pane asked of it, in English. */
export const host = {
  editing: 'A cell is being edited: finish the entry, then try again.',
  protected: 'The sheet or workbook is protected: lift the protection, then try again.',
  noRoomInExcel: 'The block does not fit on the sheet from the selected cell on: select a cell further up or left.',
  brokenOff: 'Excel broke off the request: try again.',
  inactive: 'The workbook is not the one in front: click into it, then try again.',
  hostBusy: 'Excel is too busy: wait a moment, then try again.',
  tooMuch:
    'That is more than Excel takes at once: choose a smaller range, or close what else needs memory, then try again.',
  otherSheet: 'The sheet in front has no cells: go to a sheet with cells, then try again.',
  merged: 'Merged cells stand in the way: separate them, or select a cell where none are.',
  pivot: 'A pivot table stands in the way: select a cell where none is.',
  excel: (detail: string) => `Excel refused: ${detail}`,
  readOnly:
    'The workbook can only be read here: another tab has it. Take it over first, with the button above the sheet.',
  gone: 'This place is not in the workbook any more.',
  busy: 'Excel is still calculating this sheet: wait until no cell shows #BUSY!, then try again.',
  notEmpty: (address: string, taken: string) =>
    `${address} is not empty: something stands in ${taken}. Nothing was written.`,
  noRoom: (rows: string, columns: string, address: string) =>
    `${rows} × ${columns} cells do not fit below and beside ${address}.`,
};
