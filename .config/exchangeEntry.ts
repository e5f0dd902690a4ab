/** What the comparison of workbooks needs of the grid's engine. */
export { throughGrid } from '../tests/exchange/through.js';
