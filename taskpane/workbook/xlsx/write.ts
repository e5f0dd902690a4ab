/** What the page loads with the first file that it writes. */
export { asValues, sheetAsValues } from './asValues.js';
export { writeBook } from './writeBook.js';
