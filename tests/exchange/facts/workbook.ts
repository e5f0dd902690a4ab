import { cellFacts } from './cells.js';
import type { Fact } from './fact.js';
import { filterFacts } from './filters.js';
import { conditionLooksIn, looksIn } from './looks.js';
import { at, below, isOn, partsIn, said } from './parts.js';
import { ruleFacts } from './rules.js';
import { sheetFacts } from './sheet.js';

/** Everything that a file says, one fact after the other, read from its raw parts alone. */
export function factsIn(bytes: Uint8Array): Fact[] {
  const parts = partsIn(bytes);
  const part = parts.targets('').find(({ kind }) => kind === 'officeDocument')?.target ?? '';
  const targets = parts.targets(part);
  const root = parts.root(part);
  const own = (kind: string) => parts.root(targets.find((one) => one.kind === kind)?.target);
  const styles = own('styles');
  const looks = looksIn(styles);
  const conditionLooks = conditionLooksIn(styles);
  const from1904 = isOn(said(at(root, 'workbookPr'), 'date1904'));
  const listed = below(at(root, 'sheets'), 'sheet');
  const texts = below(own('sharedStrings'), 'si');
  const nameOf = (index: string | undefined) => (index === undefined ? '' : `${said(listed[Number(index)], 'name')}!`);
  const active = Number(said(at(root, 'bookViews', 'workbookView'), 'activeTab') ?? 0);
  return [
    ...below(at(root, 'definedNames'), 'definedName').map((one): Fact => {
      const name = said(one, 'name') ?? '';
      const meaning = (one.textContent ?? '').replaceAll("'", '');
      return {
        kind: name.startsWith('_xlnm.Print') ? 'print' : name.startsWith('_xlnm._Filter') ? 'filter' : 'name',
        where: `${nameOf(said(one, 'localSheetId'))}${name}`,
        what: `${meaning}${isOn(said(one, 'hidden')) ? ', hidden' : ''}`,
      };
    }),
    ...(isOn(said(at(root, 'workbookProtection'), 'lockStructure'))
      ? [{ kind: 'protection', where: 'workbook', what: 'structure' } as const]
      : []),
    ...(from1904 ? [{ kind: 'sheet', where: 'workbook', what: 'counts days from 1904' } as const] : []),
    ...listed.flatMap((sheet, number): Fact[] => {
      const name = said(sheet, 'name') ?? '';
      const id = Array.from(sheet.attributes).find(({ localName, name: full }) => localName === 'id' && full !== 'id');
      const place = targets.find((one) => one.id === id?.value)?.target ?? '';
      const inside = parts.root(place);
      if (!inside) return [];
      const state = said(sheet, 'state') ?? 'visible';
      return [
        { kind: 'sheet', where: name, what: `sheet ${number + 1}${number === active ? ', shown first' : ''}` },
        ...(state === 'visible' ? [] : [{ kind: 'sheet', where: `${name}, hiding`, what: state } as const]),
        ...cellFacts(at(inside, 'sheetData'), { sheet: name, texts, looks, from1904 }),
        ...ruleFacts(inside, name, conditionLooks),
        ...filterFacts(inside, name, conditionLooks),
        ...sheetFacts(parts, inside, name, place),
      ];
    }),
  ];
}
