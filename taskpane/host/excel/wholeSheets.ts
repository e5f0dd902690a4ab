/** What goes through whole sheets; loaded when it is asked for, since the pane's other tabs are. */
export { copyWithValues } from './copyWithValues.js';
export { insertSheet } from './insertSheet.js';
export { readAll } from './readAll.js';
