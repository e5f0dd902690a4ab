/** What draws the charts of sheets; it loads once the grid can be used. */
export { ChartsOnSheet } from './ChartsOnSheet.js';
export { printedChart } from './printedChart.js';
