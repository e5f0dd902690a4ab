/** What stands behind the tabs that are not open at first; loaded when one of them is. */
export { starterSheets } from '../../src/sheets/index.js';
export { Check } from './check/Check.js';
export { Help } from './Help.js';
export { Sheets } from './Sheets.js';
export { Share } from './share/Share.js';
