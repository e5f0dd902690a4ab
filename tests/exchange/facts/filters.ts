import type { Element } from '@xmldom/xmldom';
import type { Fact } from './fact.js';
import { below, said } from './parts.js';

/** What one column lets through, in the words of the file. */
function criterion(element: Element, looks: readonly string[]): string {
  const inside = below(element).map((one) =>
    [one.localName, said(one, 'operator') ?? '', `“${said(one, 'val') ?? said(one, 'year')}”`]
      .filter(Boolean)
      .join(' '),
  );
  const own = Array.from(element.attributes).flatMap(({ name, value }) => {
    if (name === 'dxfId') return [looks[Number(value)] ?? 'no look'];
    return [`${name} ${value}`];
  });
  return [element.localName, ...own, ...inside].join(', ');
}

/** The filter of a sheet: its range, and each column of it that asks for something. */
export const filterFacts = (root: Element, sheet: string, looks: readonly string[]): Fact[] =>
  below(root, 'autoFilter').flatMap((filter) => {
    const where = `${sheet}!${said(filter, 'ref')?.replaceAll('$', '')}`;
    const columns = below(filter, 'filterColumn').flatMap((one) =>
      below(one).map((inside): Fact => {
        const what = criterion(inside, looks);
        return { kind: 'filter', where: `${where}, column ${Number(said(one, 'colId')) + 1}`, what };
      }),
    );
    return [{ kind: 'filter', where, what: 'a filter' }, ...columns];
  });
