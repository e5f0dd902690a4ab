import { type Book, shownSheetOf } from './book.js';
import { placeOnSheet } from './names.js';
import type { PagedSheet } from './ownPage.js';
import { printedInFile } from './printed.js';
import { namesInFile } from './writeNames.js';
import { OFFER_RELATION, OFFER_TYPES } from './writeOffer.js';
import { element, escaped, part } from './writeXml.js';

const PACKAGE = 'http://schemas.openxmlformats.org/package/2006';
export const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006';
export const RELATIONSHIPS = `${OFFICE}/relationships`;
const SPREADSHEET = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
const DYNAMIC = 'http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray';

const numbers = (count: number) => Array.from({ length: count }, (_, index) => index + 1);

export function contentTypes(sheets: number, offered: boolean, more: Readonly<Record<string, string>>): string {
  const types: Record<string, string> = {
    '/xl/workbook.xml': `${SPREADSHEET}.sheet.main+xml`,
    ...Object.fromEntries(numbers(sheets).map((n) => [`/xl/worksheets/sheet${n}.xml`, `${SPREADSHEET}.worksheet+xml`])),
    '/xl/styles.xml': `${SPREADSHEET}.styles+xml`,
    '/xl/metadata.xml': `${SPREADSHEET}.sheetMetadata+xml`,
    '/docProps/app.xml': 'application/vnd.openxmlformats-officedocument.extended-properties+xml',
    ...(offered ? OFFER_TYPES : {}),
    ...more,
  };
  return part(
    element(
      'Types',
      { xmlns: `${PACKAGE}/content-types` },
      element('Default', {
        Extension: 'rels',
        ContentType: 'application/vnd.openxmlformats-package.relationships+xml',
      }),
      element('Default', { Extension: 'xml', ContentType: 'application/xml' }),
      ...Object.entries(types).map(([PartName, ContentType]) => element('Override', { PartName, ContentType })),
    ),
  );
}

export function related(list: readonly (readonly [type: string, target: string])[]): string {
  return part(
    element(
      'Relationships',
      { xmlns: `${PACKAGE}/relationships` },
      ...list.map(([Type, Target], index) => element('Relationship', { Id: `rId${index + 1}`, Type, Target })),
    ),
  );
}

export const relations = (offered: boolean): string =>
  related([
    [`${RELATIONSHIPS}/officeDocument`, 'xl/workbook.xml'],
    [`${RELATIONSHIPS}/extended-properties`, 'docProps/app.xml'],
    ...(offered ? [[OFFER_RELATION, 'xl/webextensions/taskpanes.xml'] as const] : []),
  ]);

export const workbookRelations = (sheets: number): string =>
  related([
    ...numbers(sheets).map((n) => [`${RELATIONSHIPS}/worksheet`, `worksheets/sheet${n}.xml`] as const),
    [`${RELATIONSHIPS}/styles`, 'styles.xml'],
    [`${RELATIONSHIPS}/sheetMetadata`, 'metadata.xml'],
  ]);

/** Other programs keep the cached texts of formulas they do not know only in files of this application. */
export const APPLICATION: string = part(
  element('Properties', { xmlns: `${OFFICE}/extended-properties` }, element('Application', {}, 'Microsoft Excel')),
);

/**
 * The calculation engine that the answers are as good as: Excel calculates a file anew on opening where it names none, or an
 * older one than its own (common practice, no source). LibreOffice keeps the answers of single cells either way.
 */
const CALCULATED_BY = 191029;

/** Says that the cells with `cm="1"` hold formulas whose answers spill. */
export const METADATA: string = part(
  element(
    'metadata',
    { xmlns: MAIN, 'xmlns:xda': DYNAMIC },
    element(
      'metadataTypes',
      { count: 1 },
      element('metadataType', {
        name: 'XLDAPR',
        minSupportedVersion: 120000,
        ...{ copy: 1, pasteAll: 1, pasteValues: 1, merge: 1, splitFirst: 1, rowColShift: 1, clearFormats: 1 },
        ...{ clearComments: 1, assign: 1, coerce: 1, cellMeta: 1 },
      }),
    ),
    element(
      'futureMetadata',
      { name: 'XLDAPR', count: 1 },
      element(
        'bk',
        {},
        element(
          'extLst',
          {},
          element(
            'ext',
            { uri: '{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}' },
            element('xda:dynamicArrayProperties', { fDynamic: 1, fCollapsed: 0 }),
          ),
        ),
      ),
    ),
    element('cellMetadata', { count: 1 }, element('bk', {}, element('rc', { t: 1, v: 0 }))),
  ),
);

/** The name by which other programs find the range of a filter. */
const FILTERED = '_xlnm._FilterDatabase';

/** The list of sheets and the names that are defined on them, the rows that repeat in print among them. */
export function workbookPart(book: Omit<Book, 'sheets'> & { readonly sheets: readonly PagedSheet[] }): string {
  const { sheets } = book;
  const printed = sheets.flatMap((sheet, localSheetId) =>
    printedInFile(sheet.name, sheet.page).map(([name, places]) =>
      element('definedName', { name, localSheetId }, escaped(places)),
    ),
  );
  const filtered = sheets.flatMap(({ name, filter }, localSheetId) =>
    filter
      ? [element('definedName', { name: FILTERED, localSheetId, hidden: 1 }, escaped(placeOnSheet(name, filter.range)))]
      : [],
  );
  const defined = [...printed, ...filtered, ...namesInFile(book)];
  return part(
    element(
      'workbook',
      { xmlns: MAIN, 'xmlns:r': `${RELATIONSHIPS}` },
      element('bookViews', {}, element('workbookView', { activeTab: shownSheetOf(book) })),
      element(
        'sheets',
        {},
        ...sheets.map(({ name, hidden }, index) =>
          element('sheet', { name, sheetId: index + 1, state: hidden, 'r:id': `rId${index + 1}` }),
        ),
      ),
      defined.length > 0 ? element('definedNames', {}, ...defined) : '',
      element('calcPr', { calcId: CALCULATED_BY, fullCalcOnLoad: 0 }),
    ),
  );
}
