import type { en } from '../../taskpane/texts/en.js';
import type { Fact, FactKind } from './facts/fact.js';

export interface Difference {
  readonly kind: FactKind;
  readonly where: string;
  readonly before: readonly string[];
  readonly after: readonly string[];
}

/** What is the same in the words of two files although not letter by letter: a column is a whole number of pixels wide. */
const NEAR: Partial<Record<FactKind, number>> = { 'column width': 0.1, 'row height': 0.5 };
/** How far an answer that was calculated anew may be from the one in the file, which another program calculated. */
const ANEW = 1e-8;

const near = (one: string, other: string, least: number): boolean =>
  one !== '' && other !== '' && Math.abs(Number(one) - Number(other)) <= least;

type Grouped = ReadonlyMap<string, readonly Fact[]>;

function grouped(facts: readonly Fact[]): Grouped {
  const found = new Map<string, Fact[]>();
  for (const fact of facts) {
    const key = `${fact.kind} ${fact.where}`;
    found.set(key, [...(found.get(key) ?? []), fact]);
  }
  return found;
}

/** Everything that one file says otherwise than another, both ways. */
export function differences(before: readonly Fact[], after: readonly Fact[]): Difference[] {
  const [old, now] = [grouped(before), grouped(after)];
  const same = (kind: FactKind, where: string, one: readonly string[], other: readonly string[]): boolean =>
    one.length === other.length &&
    one.every((what, n) => {
      const then = other[n] ?? '';
      const calculated = kind === 'value' && old.has(`formula ${where}`);
      return (
        what === then || near(what, then, calculated ? ANEW * Math.max(1, Math.abs(Number(what))) : (NEAR[kind] ?? 0))
      );
    });
  return [...new Set([...old.keys(), ...now.keys()])].flatMap((key) => {
    const [was, is] = [old.get(key) ?? [], now.get(key) ?? []];
    const [{ kind, where }] = [...was, ...is] as [Fact];
    const [one, other] = [was, is].map((facts) => facts.map(({ what }) => what).sort()) as [string[], string[]];
    // A file that was never calculated has no answers yet.
    const first = kind === 'value' && was.length === 0 && old.has(`formula ${where}`);
    return first || same(kind, where, one, other) ? [] : [{ kind, where, before: one, after: other }];
  });
}

/** A phrase of the opening notice, by its key in the dictionary. */
export type Notice = keyof typeof en.open.parts;

/** Which phrases name a difference of a kind. A difference that none of them names is silent. */
const NAMES: Partial<Record<FactKind, readonly Notice[]>> = {
  value: ['brokenCells', 'outsideCells'],
  formula: [
    'external',
    'brokenFormulas',
    'heavyFormulas',
    'intersections',
    'unevenArrays',
    'tableFormulas',
    'severalSheets',
    'unknownFunctions',
    'unknownNames',
    'dataTables',
  ],
  array: ['fixedArrays', 'unevenArrays'],
  name: ['names', 'sameNames'],
  sheet: ['hiddenSheets', 'otherSheets', 'brokenSheets', 'sheetNames', 'dates1904'],
  'hidden row or column': ['hidden', 'filters'],
  outline: ['outline'],
  fill: ['looks'],
  alignment: ['looks'],
  border: ['looks'],
  'rich text': ['richText'],
  note: ['notes'],
  print: ['printAreas'],
  'merged cells': ['merged'],
  'conditional format': ['conditions', 'conditionLooks'],
  'rule for entries': ['validations', 'notes'],
  link: ['links'],
  table: ['tables'],
  filter: ['filters'],
  chart: ['charts'],
  picture: ['pictures'],
  protection: ['protection'],
};

export interface Judged extends Difference {
  /** The phrases of the notice that name it; none where it is silent. */
  readonly told: readonly Notice[];
}

export const judged = (found: readonly Difference[], notices: readonly Notice[]): Judged[] =>
  found.map((one) => ({ ...one, told: notices.filter((notice) => NAMES[one.kind]?.includes(notice)) }));

/** A difference as a line that a person reads. */
export const inWords = ({ kind, where, before, after }: Difference): string =>
  `${kind} of ${where}: ${before.join(' and ') || 'nothing'} became ${after.join(' and ') || 'nothing'}`;
