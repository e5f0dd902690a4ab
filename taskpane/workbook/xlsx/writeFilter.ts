import { a1 } from '../../host/a1.js';
import { type Criterion, type Filter, isWritable } from './filter.js';
import { rectangleOf } from './readPlaces.js';
import type { WrittenStyles } from './writeStyles.js';
import { element } from './writeXml.js';

/** A condition of the grid for cells that are empty, or are not, as files say it. */
const BLANK = element('filters', { blank: 1 });

function criterionPart(criterion: Criterion, styles: WrittenStyles): string {
  switch (criterion.kind) {
    case 'values': {
      const values = criterion.values.map((val) => element('filter', { val }));
      return element('filters', { blank: criterion.blank ? 1 : undefined }, ...values);
    }
    case 'conditions': {
      const [first, second] = criterion.conditions;
      if (!second && first?.value === '' && first.comparison === undefined) return BLANK;
      const listed = criterion.conditions.map(({ comparison, value }) => {
        const val = value === '' && comparison === 'notEqual' ? ' ' : value;
        return element('customFilter', { operator: comparison === 'equal' ? undefined : comparison, val });
      });
      return element('customFilters', { and: criterion.both ? 1 : undefined }, ...listed);
    }
    case 'fills':
      return element('colorFilter', { dxfId: styles.groundId(criterion.colours[0]) });
    case 'inks':
      return element('colorFilter', { dxfId: styles.inkId(criterion.colours[0] ?? '#000000'), cellColor: 0 });
  }
}

/** A filter as the part of its sheet has it. */
export function filterPart({ range, columns }: Filter, styles: WrittenStyles): string {
  const { top, left, bottom, right } = rectangleOf(range) ?? { top: 0, left: 0, bottom: 0, right: 0 };
  const listed = columns
    .filter(({ criterion }) => isWritable(criterion))
    .map(({ column, criterion }) =>
      element('filterColumn', { colId: column - left }, criterionPart(criterion, styles)),
    );
  return element('autoFilter', { ref: `${a1(top, left)}:${a1(bottom, right)}` }, ...listed);
}
