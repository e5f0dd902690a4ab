import { placesOf } from './block.js';
import { aboutCell, text } from './cells.js';
import type { Columns } from './columns.js';
import type { At, Line } from './layout.js';
import type { Block } from './list.js';
import { placeOf } from './place.js';
import { sourceCell } from './provenance.js';
import { EXAMPLES, quotedText, type Step, said, steps } from './verdict.js';

interface Chosen {
  readonly name: string;
  readonly label: string;
  readonly example: string;
  readonly help: string;
  readonly about: string;
  /** A cell that serves where no row is named, and what is said where both are blank. */
  readonly instead?: { readonly name: string; readonly words: string };
}

/** The figure of the row that is named, in a column of the list. */
export const ofChosen = (block: Block, at: At, name: string, key: string): string => {
  const q = placesOf(block, at);
  const names = q((block.given[0] as Block['given'][number]).key);
  return `INDEX(${q(key)},MATCH(${at(name)},${names},0))`;
};

/** The row must be there, once, and count. */
function judged(block: Block, at: At, { name, label, example, instead }: Chosen, source: string): string {
  const place = at(name);
  const names = placesOf(block, at)((block.given[0] as Block['given'][number]).key);
  const refuse =
    (condition: string, words: string): Step =>
    (rest) =>
      `IF(${condition},${said('refused', place, `${label}: ${words}`)},${rest})`;
  const blank: readonly Step[] = instead
    ? [
        refuse(`LEN(${place})+LEN(${at(instead.name)})=0`, instead.words),
        (rest) => `IF(LEN(${place})=0,"usual",${rest})`,
      ]
    : [refuse(`LEN(${place})=0`, `name one ${block.what} of the list.`)];
  const base = steps(
    [
      refuse(`ISERROR(${place})`, 'is an error.'),
      ...blank,
      refuse(`ISERROR(MATCH(${place},${names},0))`, `no ${block.what} of the list is called so.`),
      refuse(`SUMPRODUCT(--(${names}=${place}))>1`, `several rows of the list are called so.`),
      refuse(`${ofChosen(block, at, name, 'counted')}<>1`, `that ${block.what} is not complete.`),
    ],
    '"usual"',
  );
  return `=${base}&IFERROR(IF((LEN(${source})=0)*(${place}=${quotedText(example)}),", ${EXAMPLES}",""),"")`;
}

/** A cell that names a row of a list. */
export function chosenLine(columns: Columns, block: Block, chosen: Chosen): Line {
  const { name, label, example, help, about } = chosen;
  const others = columns.figures.slice(1).map(() => text('', 'note'));
  return {
    marks: { [name]: { column: 1 } },
    judged: [{ cells: { column: 1 }, by: { column: columns.judgement } }],
    cells: (at) => {
      const row = Number(/\d+/.exec(at(name))?.[0]) - 1;
      const placed = (column: number) => placeOf(row, { column });
      return [
        text(label, 'label'),
        { text: example, style: 'input', note: help },
        ...others,
        text('', 'unit'),
        { formula: judged(block, at, chosen, placed(columns.source)), style: 'note' },
        ...others,
        sourceCell,
        aboutCell([placed(columns.judgement)], about),
      ];
    },
  };
}
