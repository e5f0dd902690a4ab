import { strToU8, zipSync } from 'fflate';
import { type Book, shownSheetOf } from './book.js';
import { paged } from './ownPage.js';
import { rangesIn } from './plainFormula.js';
import { drawingParts, drawingTypes } from './writeDrawing.js';
import { type Offer, offerParts } from './writeOffer.js';
import { APPLICATION, contentTypes, METADATA, relations, workbookPart, workbookRelations } from './writeParts.js';
import { sheetPart } from './writeSheet.js';
import { WrittenStyles } from './writeStyles.js';

/** The first moment that a zip file can name: the same workbook gives the same bytes. */
const MOMENT = new Date('1980-01-01T00:00:00');

/**
 * A workbook as the bytes of an .xlsx file: formulas in the form that Excel stores for an add-in's functions, with their
 * last answers.
 * @param offer the add-in that Excel offers on opening.
 */
export function writeBook(book: Book, offer?: Offer): Uint8Array {
  const styles = new WrittenStyles();
  const ranges = rangesIn(book);
  const shown = shownSheetOf(book);
  const all = book.sheets.map(paged);
  const sheets = all.map((sheet, place) => sheetPart(sheet, { styles, ranges }, place === shown));
  const drawings = drawingParts(book.sheets);
  const parts: Record<string, string> = {
    '[Content_Types].xml': contentTypes(sheets.length, offer !== undefined, drawingTypes(drawings)),
    '_rels/.rels': relations(offer !== undefined),
    'docProps/app.xml': APPLICATION,
    'xl/workbook.xml': workbookPart({ ...book, sheets: all }),
    'xl/_rels/workbook.xml.rels': workbookRelations(sheets.length),
    'xl/metadata.xml': METADATA,
    'xl/styles.xml': styles.xml(),
    ...Object.fromEntries(sheets.map((sheet, index) => [`xl/worksheets/sheet${index + 1}.xml`, sheet])),
    ...drawings,
    ...(offer ? offerParts(offer) : {}),
  };
  const files = Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)]));
  return zipSync(files, { mtime: MOMENT, level: 6 });
}
