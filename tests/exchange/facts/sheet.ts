import type { Element } from '@xmldom/xmldom';
import { drawingFacts } from './charts.js';
import type { Fact, FactKind } from './fact.js';
import { at, below, everywhere, type FileParts, isOn, said } from './parts.js';

/** Marks of an element that are set. */
const marks = (element: Element | undefined): string =>
  Array.from(element?.attributes ?? [])
    .flatMap(({ name, value }) => (isOn(value) && name !== 'gridLinesSet' ? [name] : []))
    .sort()
    .join(', ');

const attributes = (element: Element | undefined, ...left: readonly string[]): string =>
  Array.from(element?.attributes ?? [])
    .filter(({ name }) => !left.includes(name))
    .map(({ name, value }) => `${name} ${value}`)
    .sort()
    .join(', ');

/** Widths and heights, and what is hidden or grouped. */
function lineFacts(root: Element, sheet: string): Fact[] {
  const fact = (kind: FactKind, where: string, what: string): Fact => ({ kind, where: `${sheet}, ${where}`, what });
  const columns = below(at(root, 'cols'), 'col').flatMap((one) => {
    const facts: Fact[] = [];
    for (let column = Number(said(one, 'min')); column <= Math.min(Number(said(one, 'max')), 256); column += 1) {
      const where = `column ${column}`;
      if (isOn(said(one, 'hidden'))) facts.push(fact('hidden row or column', where, 'hidden'));
      if (Number(said(one, 'outlineLevel') ?? 0) > 0)
        facts.push(fact('outline', where, said(one, 'outlineLevel') ?? ''));
      if (said(one, 'width') && isOn(said(one, 'customWidth')))
        facts.push(fact('column width', where, said(one, 'width') ?? ''));
    }
    return facts;
  });
  const rows = below(at(root, 'sheetData'), 'row').flatMap((one) => {
    const where = `row ${said(one, 'r')}`;
    return [
      ...(isOn(said(one, 'hidden')) ? [fact('hidden row or column', where, 'hidden')] : []),
      ...(Number(said(one, 'outlineLevel') ?? 0) > 0 ? [fact('outline', where, said(one, 'outlineLevel') ?? '')] : []),
      ...(isOn(said(one, 'customHeight')) ? [fact('row height', where, said(one, 'ht') ?? '')] : []),
    ];
  });
  return [...columns, ...rows];
}

function viewFacts(root: Element, sheet: string): Fact[] {
  const view = at(root, 'sheetViews', 'sheetView');
  const pane = at(view, 'pane');
  const split = (name: string) => Number(said(pane, name) ?? 0);
  const zoom = said(view, 'zoomScale') ?? '100';
  const lines = said(view, 'showGridLines') ?? '1';
  const tab = said(at(root, 'sheetPr', 'tabColor'), 'rgb');
  const fact = (kind: FactKind, what: string): Fact => ({ kind, where: sheet, what });
  return [
    ...(said(pane, 'state')?.startsWith('frozen')
      ? [fact('frozen panes', `${split('ySplit')} rows, ${split('xSplit')} columns`)]
      : []),
    ...(zoom === '100' ? [] : [fact('view', `at ${zoom} %`)]),
    ...(isOn(lines) ? [] : [fact('view', 'without lines')]),
    ...(tab ? [fact('tab colour', tab.slice(-6))] : []),
  ];
}

/** Set-up of print: a file of our own always says its margins, so only what differs from a file that says nothing counts. */
function printFacts(root: Element, sheet: string): Fact[] {
  const fact = (where: string, what: string): Fact[] =>
    what ? [{ kind: 'print', where: `${sheet}, ${where}`, what }] : [];
  const page = at(root, 'pageSetup');
  const fits = isOn(said(at(root, 'sheetPr', 'pageSetUpPr'), 'fitToPage'));
  const breaks = (name: string) =>
    everywhere(at(root, name), 'brk').flatMap((one) => (isOn(said(one, 'man')) ? [said(one, 'id')] : []));
  return [
    ...fact('direction', said(page, 'orientation') ?? ''),
    ...fact('paper', said(page, 'paperSize') ?? ''),
    ...fact(
      'size',
      fits
        ? `${said(page, 'fitToWidth') ?? 1} by ${said(page, 'fitToHeight') ?? 1} pages`
        : said(page, 'scale')
          ? `${said(page, 'scale')} %`
          : '',
    ),
    ...fact('margins', attributes(at(root, 'pageMargins'))),
    ...fact('options', marks(at(root, 'printOptions'))),
    ...below(at(root, 'headerFooter')).flatMap((one) => fact(one.localName ?? '', one.textContent ?? '')),
    ...fact('pages begin above', breaks('rowBreaks').join(', ')),
    ...fact('pages begin beside', breaks('colBreaks').join(', ')),
  ];
}

function objectFacts(parts: FileParts, root: Element, sheet: string, part: string): Fact[] {
  const targets = parts.targets(part);
  const fact = (kind: FactKind, place: string, what: string): Fact => ({ kind, where: `${sheet}!${place}`, what });
  const protectedBy = at(root, 'sheetProtection');
  const comments = parts.root(targets.find(({ kind }) => kind === 'comments')?.target);
  return [
    ...below(at(root, 'mergeCells'), 'mergeCell').map((one) => fact('merged cells', said(one, 'ref') ?? '', 'merged')),
    ...below(at(root, 'hyperlinks'), 'hyperlink').map((one) => {
      const id = Array.from(one.attributes).find(({ localName }) => localName === 'id')?.value;
      const target = targets.find((each) => each.id === id)?.target;
      return fact('link', said(one, 'ref') ?? '', [target, said(one, 'location')].filter(Boolean).join('#'));
    }),
    ...(protectedBy ? [fact('protection', 'sheet', attributes(protectedBy))] : []),
    ...below(at(comments, 'commentList'), 'comment').map((one) =>
      fact(
        'note',
        said(one, 'ref') ?? '',
        everywhere(one, 't')
          .map((text) => text.textContent)
          .join(''),
      ),
    ),
    ...targets
      .filter(({ kind }) => kind === 'table')
      .map(({ target }) =>
        fact('table', said(parts.root(target), 'ref') ?? '', said(parts.root(target), 'displayName') ?? ''),
      ),
    ...drawingFacts(parts, sheet, part),
  ];
}

/** All that a sheet says besides its cells. */
export const sheetFacts = (parts: FileParts, root: Element, sheet: string, part: string): Fact[] => [
  ...lineFacts(root, sheet),
  ...viewFacts(root, sheet),
  ...printFacts(root, sheet),
  ...objectFacts(parts, root, sheet, part),
];
