import { COMPARISONS, type Criterion, type Filter, type FilterCondition } from './filter.js';
import { LIMITS } from './limits.js';
import type { Reading } from './reading.js';
import { rectangleOf } from './readPlaces.js';
import type { ConditionColours } from './readStyles.js';
import { attribute, childOf, childrenOf, isTrue, whole, type XmlElement } from './readXml.js';

const isFigure = (text: string): boolean => text.trim() !== '' && Number.isFinite(Number(text));

function valuesOf(element: XmlElement): Criterion | undefined {
  const listed = childrenOf(element);
  if (listed.length > LIMITS.choices || listed.some(({ localName }) => localName !== 'filter')) return undefined;
  const values = listed.map((one) => attribute(one, 'val') ?? '');
  return { kind: 'values', values, blank: isTrue(attribute(element, 'blank')) };
}

/** A condition that the grid tries as the file means it: it knows no order of texts, and no `~` before a mark. */
function conditionOf(element: XmlElement): FilterCondition | undefined {
  const value = attribute(element, 'val') ?? '';
  const said = attribute(element, 'operator') ?? 'equal';
  const comparison = COMPARISONS.find((one) => one === said);
  if (!comparison || value.length > LIMITS.text) return undefined;
  if (isFigure(value)) return { comparison, value };
  if (value.includes('~')) return undefined;
  if (comparison === 'equal') return { value };
  return comparison === 'notEqual' ? { comparison, value } : undefined;
}

function conditionsOf(element: XmlElement): Criterion | undefined {
  const conditions = childrenOf(element, 'customFilter').map(conditionOf);
  const known = conditions.filter((one) => one !== undefined);
  if (known.length < conditions.length || known.length < 1 || known.length > 2) return undefined;
  return { kind: 'conditions', conditions: known, both: isTrue(attribute(element, 'and')) };
}

function colourOf(element: XmlElement, colours: readonly ConditionColours[]): Criterion | undefined {
  const look = colours[whole(attribute(element, 'dxfId')) ?? -1];
  if (!look) return undefined;
  return isTrue(attribute(element, 'cellColor') ?? '1')
    ? { kind: 'fills', colours: [look.fill] }
    : { kind: 'inks', colours: [look.ink ?? '#000000'] };
}

/** What a column of a filter asks for; nothing where the grid has no such criterion. */
function criterionOf(element: XmlElement, colours: readonly ConditionColours[]): Criterion | undefined {
  if (element.localName === 'filters') return valuesOf(element);
  if (element.localName === 'customFilters') return conditionsOf(element);
  return element.localName === 'colorFilter' ? colourOf(element, colours) : undefined;
}

/** The filter of a sheet; rows that one of an unknown kind hides are shown, which is told. */
function ownFilter(element: XmlElement, colours: readonly ConditionColours[], { leftOut }: Reading) {
  const range = attribute(element, 'ref')?.replaceAll('$', '') ?? '';
  const area = rectangleOf(range);
  const fits = area && area.top < area.bottom && area.bottom < LIMITS.rows && area.right < LIMITS.columns;
  if (!fits) {
    leftOut.add('filters');
    return undefined;
  }
  const listed = childrenOf(element, 'filterColumn').flatMap((one) =>
    childrenOf(one).map((inside) => ({
      column: area.left + (whole(attribute(one, 'colId')) ?? LIMITS.columns),
      criterion: criterionOf(inside, colours),
    })),
  );
  const columns = listed.flatMap(({ column, criterion }) =>
    criterion && column <= area.right ? [{ column, criterion }] : [],
  );
  if (columns.length < listed.length) leftOut.add('filters');
  return { area, range, columns, asks: listed.length > 0, whole: columns.length === listed.length };
}

interface Filtered {
  readonly filter?: Filter;
  /** The hidden rows that it does not hide. */
  readonly others: readonly number[];
}

/**
 * The filter of a sheet with the rows that it hides, as the file has them.
 * @param hidden the numbers of all hidden rows, from 0.
 */
export function filterOf(
  sheet: XmlElement,
  hidden: readonly number[],
  colours: readonly ConditionColours[],
  reading: Reading,
): Filtered {
  const element = childOf(sheet, 'autoFilter');
  const found = element && ownFilter(element, colours, reading);
  if (!found) return { others: hidden };
  const { area, range, columns, asks } = found;
  const isWithin = (row: number) => row > area.top && row <= area.bottom;
  // A filter that asks for nothing hides nothing: such rows were hidden by hand.
  const others = asks ? hidden.filter((row) => !isWithin(row)) : hidden;
  const known = columns.length > 0 && found.whole;
  return { filter: { range, columns, ...(known ? { hidden: hidden.filter(isWithin) } : {}) }, others };
}
