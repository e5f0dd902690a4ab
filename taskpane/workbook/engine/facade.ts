export { FUniver } from '@univerjs/core/facade';
export type { FRange, FWorkbook, FWorksheet } from '@univerjs/sheets/facade';
