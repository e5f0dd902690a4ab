import type { Element } from '@xmldom/xmldom';
import type { Fact } from './fact.js';
import { at, below, everywhere, isOn, said } from './parts.js';

const formulas = (rule: Element, pattern: RegExp) =>
  below(rule).flatMap((one) => (pattern.test(one.localName ?? '') ? [one.textContent?.trim() ?? ''] : []));

/** Conditional formats and rules for entries, each of a range. */
export function ruleFacts(root: Element, sheet: string, looks: readonly string[]): Fact[] {
  const conditions = below(root, 'conditionalFormatting').flatMap((block) =>
    below(block, 'cfRule').map((rule): Fact => {
      const scale = ['colorScale', 'dataBar', 'iconSet'].flatMap((name) =>
        everywhere(at(rule, name), 'color').map((one) => said(one, 'rgb')),
      );
      const what = [
        ...['type', 'operator', 'rank', 'text'].map((name) => said(rule, name)),
        ...formulas(rule, /^formula/),
        ...scale,
        said(rule, 'dxfId') === undefined ? undefined : looks[Number(said(rule, 'dxfId'))],
      ];
      return {
        kind: 'conditional format',
        where: `${sheet}!${said(block, 'sqref')}`,
        what: what.filter(Boolean).join(' · '),
      };
    }),
  );
  const validations = below(at(root, 'dataValidations'), 'dataValidation').flatMap((rule): Fact[] => {
    const kind = said(rule, 'type') ?? 'none';
    const what = [
      kind,
      // Between two limits is what a rule means where it says nothing.
      kind === 'list' || kind === 'none' || kind === 'custom' ? undefined : (said(rule, 'operator') ?? 'between'),
      ...formulas(rule, /^formula/).map((one) => one.replace(/, /g, ',')),
      isOn(said(rule, 'showErrorMessage'))
        ? [said(rule, 'errorStyle') ?? 'stop', said(rule, 'error')].filter(Boolean).join(' ')
        : undefined,
      ...['errorTitle', 'promptTitle'].map((name) => said(rule, name)),
      kind !== 'none' && isOn(said(rule, 'allowBlank')) ? 'or blank' : undefined,
      isOn(said(rule, 'showInputMessage')) ? said(rule, 'prompt') : undefined,
    ]
      .filter(Boolean)
      .join(' · ');
    return cellsOf(said(rule, 'sqref') ?? '').map((place) => ({
      kind: 'rule for entries',
      where: `${sheet}!${place}`,
      what,
    }));
  });
  return [...conditions, ...validations];
}

const column = (letters: string) => [...letters].reduce((sum, one) => sum * 26 + one.charCodeAt(0) - 64, 0);

/** Each cell of a list of ranges: a rule is the same whichever way its cells are put together. */
export function cellsOf(ranges: string): string[] {
  return ranges.split(' ').flatMap((range) => {
    const [, left = '', top = '', right = left, bottom = top] = /^([A-Z]+)(\d+)(?::([A-Z]+)(\d+))?$/.exec(range) ?? [];
    const places: string[] = [];
    for (let row = Number(top); row <= Number(bottom); row += 1)
      for (let one = column(left); one <= column(right); one += 1)
        places.push(`${String.fromCharCode(64 + one)}${row}`);
    return places;
  });
}
