import { blankSheet } from './blankSheet.js';
import { collection } from './collection.js';
import { fakeRange } from './fakeRange.js';
import { loadable } from './loadable.js';
import { recorded } from './recorded.js';
import { tablesOf } from './tablesOf.js';

/** What the fake workbook is made of. None of it refers to anything outside itself. */
export const fakeParts = { loadable, fakeRange, collection, recorded, blankSheet, tablesOf };
export type FakeParts = typeof fakeParts;
