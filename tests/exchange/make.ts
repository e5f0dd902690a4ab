import { strToU8, zipSync } from 'fflate';
import type { TextParts } from '../workbook/xlsx/handMade.js';

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006';
const SPREADSHEET = 'application/vnd.openxmlformats-officedocument.spreadsheetml';

/** Where a part points: an id, the last word of the kind, the target, and whether that lies outside the file. */
export type Link = readonly [id: string, kind: string, target: string, outside?: boolean];

export interface MadeSheet {
  readonly name: string;
  readonly state?: 'hidden' | 'veryHidden';
  /** What stands in the sheet's element, cells and all. */
  readonly inside: string;
  readonly links?: readonly Link[];
}

/** A workbook put together part by part, so that nothing between the author and the file can hide anything. */
export interface Made {
  readonly sheets: readonly MadeSheet[];
  /** What stands in the workbook's element before and after its list of sheets. */
  readonly before?: string;
  readonly after?: string;
  readonly styles?: string;
  readonly texts?: string;
  readonly more?: TextParts;
  readonly links?: readonly Link[];
  /** Content type by part, for those that are not sheets, styles or texts. */
  readonly types?: Readonly<Record<string, string>>;
}

export const linked = (links: readonly Link[]): string =>
  `<Relationships xmlns="${PACKAGE}/relationships">${links
    .map(
      ([id, kind, target, outside]) =>
        `<Relationship Id="${id}" Type="${OFFICE}/${kind}" Target="${target}"${outside ? ' TargetMode="External"' : ''}/>`,
    )
    .join('')}</Relationships>`;

export const xml = (text: string) =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;').replaceAll('\n', '&#10;');

const typesOf = ({ sheets, styles, texts, types = {} }: Made): string => {
  const all = {
    '/xl/workbook.xml': `${SPREADSHEET}.sheet.main+xml`,
    ...Object.fromEntries(sheets.map((_, n) => [`/xl/worksheets/sheet${n + 1}.xml`, `${SPREADSHEET}.worksheet+xml`])),
    ...(styles ? { '/xl/styles.xml': `${SPREADSHEET}.styles+xml` } : {}),
    ...(texts ? { '/xl/sharedStrings.xml': `${SPREADSHEET}.sharedStrings+xml` } : {}),
    ...types,
  };
  const listed = Object.entries(all).map(([name, type]) => `<Override PartName="${name}" ContentType="${type}"/>`);
  return `<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Default Extension="vml" ContentType="application/vnd.openxmlformats-officedocument.vmlDrawing"/><Default Extension="png" ContentType="image/png"/>${listed.join('')}</Types>`;
};

/** The parts of a made workbook as text. */
export function partsOfMade(made: Made): TextParts {
  const { sheets, before = '', after = '', styles, texts, more = {}, links = [] } = made;
  const listed = sheets.map(
    ({ name, state }, n) =>
      `<sheet name="${xml(name)}" sheetId="${n + 1}"${state ? ` state="${state}"` : ''} r:id="sheet${n + 1}"/>`,
  );
  return {
    '[Content_Types].xml': typesOf(made),
    '_rels/.rels': linked([['rId1', 'officeDocument', 'xl/workbook.xml']]),
    'xl/workbook.xml': `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}">${before}<sheets>${listed.join('')}</sheets>${after}</workbook>`,
    'xl/_rels/workbook.xml.rels': linked([
      ...sheets.map((_, n): Link => [`sheet${n + 1}`, 'worksheet', `worksheets/sheet${n + 1}.xml`]),
      ...(styles ? [['styles', 'styles', 'styles.xml'] as const] : []),
      ...(texts ? [['texts', 'sharedStrings', 'sharedStrings.xml'] as const] : []),
      ...links,
    ]),
    ...(styles ? { 'xl/styles.xml': `<styleSheet xmlns="${MAIN}">${styles}</styleSheet>` } : {}),
    ...(texts ? { 'xl/sharedStrings.xml': `<sst xmlns="${MAIN}">${texts}</sst>` } : {}),
    ...Object.fromEntries(
      sheets.flatMap(({ inside, links: own }, n) => [
        [`xl/worksheets/sheet${n + 1}.xml`, `<worksheet xmlns="${MAIN}" xmlns:r="${OFFICE}">${inside}</worksheet>`],
        ...(own ? [[`xl/worksheets/_rels/sheet${n + 1}.xml.rels`, linked(own)]] : []),
      ]),
    ),
    ...more,
  };
}

export const bytesOfMade = (made: Made): Uint8Array =>
  zipSync(Object.fromEntries(Object.entries(partsOfMade(made)).map(([name, text]) => [name, strToU8(text)])));
