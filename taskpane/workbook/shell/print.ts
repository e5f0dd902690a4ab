import type { Texts } from '../../texts/texts.js';
import type { PrintedCell, PrintedRow, PrintedSheet } from '../grid/pageOfSheet.js';

/** Sheets wider than this, in pixels, are printed on the long side of the paper. */
const UPRIGHT = 760;
/** No column is squeezed below or spread beyond these shares of the others. */
const [LEAST, MOST] = [40, 320];
const CLASS = 'workbook-print';

const make = <K extends keyof HTMLElementTagNameMap>(tag: K, ...children: (Node | string)[]) => {
  const element = document.createElement(tag);
  element.append(...children);
  return element;
};

/** A text runs over the empty cells beside it, as on the sheet, and wraps at the end of them. */
function spanOf(row: PrintedRow, column: number): number {
  const { text, number, align, look } = row[column] as PrintedCell;
  if (text === '' || number || look.fill || (align.across && align.across !== 'left')) return 1;
  let end = column + 1;
  while (end < row.length && row[end]?.text === '' && !row[end]?.look.fill && !row[end]?.look.lines) end += 1;
  return end - column;
}

function cellElement({ text, look, align, number }: PrintedCell, tag: 'td' | 'th', span: number): HTMLElement {
  const cell = make(tag, text);
  cell.colSpan = span;
  const { style } = cell;
  if (look.bold) style.fontWeight = '700';
  if (look.italic) style.fontStyle = 'italic';
  if (look.fill) style.backgroundColor = look.fill;
  if (look.lines) style.border = '0.5pt solid #8a9799';
  style.textAlign = align.across ?? (number ? 'right' : 'left');
  return cell;
}

function rowElement(row: PrintedRow, tag: 'td' | 'th'): HTMLElement {
  const line = make('tr');
  for (let column = 0; column < row.length; ) {
    const span = spanOf(row, column);
    line.append(cellElement(row[column] as PrintedCell, tag, span));
    column += span;
  }
  return line;
}

/** Charts as the page draws them; there are none before that part of it has loaded. */
export type DrawChart = (chart: PrintedSheet['charts'][number]['chart']) => HTMLElement | undefined;

/** A chart stands below the part beside which it begins on the sheet. */
function chartRow(drawn: HTMLElement, columns: number): HTMLElement {
  const cell = make('td', drawn);
  cell.colSpan = columns;
  return make('tbody', make('tr', cell));
}

function tableOf({ widths, titles, parts, charts }: PrintedSheet, draw: DrawChart): HTMLElement {
  const limited = widths.map((width) => Math.min(MOST, Math.max(LEAST, width)));
  const all = limited.reduce((sum, width) => sum + width, 0);
  const columns = make('colgroup');
  for (const width of limited) {
    const column = make('col');
    column.style.width = `${(100 * width) / all}%`;
    columns.append(column);
  }
  const heads = make('thead', ...titles.map((row) => rowElement(row, 'th')));
  const chartsAfter = (number: number) =>
    charts.flatMap(({ after, chart }) => {
      const drawn = after === number ? draw(chart) : undefined;
      return drawn ? [chartRow(drawn, widths.length)] : [];
    });
  const bodies = parts.flatMap(({ rows }, index) => [
    make('tbody', ...rows.map((row) => rowElement(row, 'td'))),
    ...chartsAfter(index + 1),
  ]);
  return make('table', columns, heads, ...chartsAfter(0), ...bodies);
}

/** Puts the shown sheet into the page for as long as it is printed, whichever way that is asked for. */
export function printSheet(
  read: () => (PrintedSheet & { readonly upToDate: boolean }) | undefined,
  words: Texts['workbook'],
  language: string,
  draw: DrawChart,
): void {
  const title = document.title;
  const clear = () => {
    for (const old of document.querySelectorAll(`.${CLASS}`)) old.remove();
    document.title = title;
  };
  window.addEventListener('beforeprint', () => {
    clear();
    const sheet = read();
    if (!sheet) return;
    const now = new Date();
    const caption = make(
      'p',
      `${sheet.name} · ${now.toLocaleString(language, { dateStyle: 'long', timeStyle: 'short' })}`,
    );
    const early = sheet.upToDate ? [] : [make('p', words.printedEarly)];
    const section = make('section', caption, ...early, tableOf(sheet, draw));
    section.className = CLASS;
    section.dataset.wide = String(sheet.widths.reduce((sum, width) => sum + width, 0) > UPRIGHT);
    document.body.append(section);
    // The name that a printer or a file gets.
    document.title = `${sheet.name} ${now.toISOString().slice(0, 10)}`;
  });
  window.addEventListener('afterprint', clear);
}
