import { translateFormulaToA1, translateFormulaToR1C1 } from '@borgar/fx/xlsx';
import type { Element } from '@xmldom/xmldom';
import type { Fact, FactKind } from './fact.js';
import type { LookFacts } from './looks.js';
import { at, below, everywhere, isOn, said } from './parts.js';

export interface CellContext {
  readonly sheet: string;
  readonly texts: readonly Element[];
  readonly looks: readonly LookFacts[];
  readonly from1904: boolean;
}

const DAYS_TO_1904 = 1462;
const isDay = (format = '') => /[yd]/i.test(format.replace(/"[^"]*"|\[[^\]]*\]/g, ''));

/** The letters of a text, without what is spoken above them. */
const plain = (text: Element | undefined): string =>
  everywhere(text, 't')
    .filter((one) => one.parentNode?.localName !== 'rPh')
    .map((one) => one.textContent ?? '')
    .join('')
    .replace(/_x([0-9A-F]{4})_/gi, (_, code) => String.fromCharCode(Number.parseInt(code, 16)));

const textOf = (cell: Element, texts: readonly Element[]): Element | undefined =>
  said(cell, 't') === 's' ? texts[Number(at(cell, 'v')?.textContent)] : at(cell, 'is');

function contentOf(cell: Element, format: string | undefined, { texts, from1904 }: CellContext): string | undefined {
  const kind = said(cell, 't') ?? 'n';
  const content = at(cell, 'v')?.textContent ?? undefined;
  if (kind === 's' || kind === 'inlineStr') return `text ${JSON.stringify(plain(textOf(cell, texts)))}`;
  if (kind === 'str') return `text ${JSON.stringify(content ?? '')}`;
  if (!content) return undefined;
  if (kind === 'b') return content === '1' ? 'TRUE' : 'FALSE';
  if (kind === 'e') return content;
  const number =
    kind === 'd' ? Date.parse(content.includes('T') ? `${content}Z` : content) / 86_400_000 + 25_569 : Number(content);
  return String(from1904 && kind === 'n' && isDay(format) ? number + DAYS_TO_1904 : number + 0);
}

/** What the cells of a sheet say: values, formulas, arrays, looks. */
export function cellFacts(data: Element | undefined, context: CellContext): Fact[] {
  const shared = new Map<string, string>();
  const formulaOf = (element: Element, place: string): string => {
    const own = element.textContent ?? '';
    const number = said(element, 'si') ?? '';
    if (said(element, 't') !== 'shared') return own;
    if (own) shared.set(number, translateFormulaToR1C1(own, place));
    return own || translateFormulaToA1(shared.get(number) ?? '', place);
  };
  return below(data, 'row').flatMap((row) =>
    below(row, 'c').flatMap((cell): Fact[] => {
      const place = said(cell, 'r') ?? '';
      const look = context.looks[Number(said(cell, 's') ?? 0)] ?? {};
      const element = at(cell, 'f');
      const array = element && said(element, 't') === 'array' ? said(element, 'ref') : undefined;
      const runs = everywhere(textOf(cell, context.texts), 'r').length;
      const facts: Partial<Record<FactKind, string | undefined>> = {
        ...look,
        value: contentOf(cell, look['number format'], context),
        formula: element && formulaOf(element, place),
        array: array && `${array}${isOn(said(cell, 'cm')) ? ', spills' : ''}`,
        'rich text': runs > 1 ? `${runs} runs` : undefined,
      };
      return Object.entries(facts).flatMap(([kind, what]) =>
        what ? [{ kind: kind as FactKind, where: `${context.sheet}!${place}`, what }] : [],
      );
    }),
  );
}
