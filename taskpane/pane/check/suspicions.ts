import { UNITS } from '../../../src/core/units.js';
import type { RangeReference } from '../../host/reference.js';
import type { Received } from './checkFormula.js';
import type { Finding } from './finding.js';
import type { Snapshot } from './snapshot.js';

/** From so many formulas on, a figure typed into each of them deserves a cell of its own. */
const MANY = 3;
const DOSE = 'g/hL';

interface Typed {
  readonly subject: string;
  readonly value: number;
  readonly unit: string;
  readonly places: RangeReference[];
}

interface Dose {
  readonly name: string;
  readonly value: number;
  readonly place: RangeReference;
}

/** None, all, and what an input is without a figure say how a formula calculates: they are nobody’s measurement. */
const isOfTheFormula = (input: Received['one']['input'], cell: number): boolean =>
  cell === 0 || cell === 1 || ('preset' in input && input.preset === cell);

/** What can only be seen by comparing formulas: figures typed again and again, and doses that contradict. */
export class Suspicions {
  readonly #typed = new Map<string, Typed>();
  /** By the words beside the cell and the input's label: the first dose of each row. */
  readonly #doses = new Map<string, Map<string, Dose>>();

  constructor(private readonly snapshot: Snapshot) {}

  readonly receive = ({ id, one: { input, cell }, literal, formula, origin }: Received): void => {
    if (typeof cell !== 'number' || !('limit' in input)) return;
    const { label, unit } = input;
    if (literal && !isOfTheFormula(input, cell)) {
      const key = `${label} ${unit} ${cell}`;
      const typed = this.#typed.get(key) ?? { subject: `POWDER.${id}: ${label}`, value: cell, unit, places: [] };
      typed.places.push(formula);
      this.#typed.set(key, typed);
    }
    // The rungs of a ladder and the feeds of several trials differ by design.
    if (origin && unit === DOSE && input.kind === 'number') this.dose(label, cell, origin);
  };

  private dose(label: string, value: number, place: RangeReference): void {
    const { sheet, top, left } = place;
    // What is calculated may well differ; what was typed twice should agree.
    if (typeof this.snapshot.cell('formulas', sheet, top, left) !== 'number') return;
    const name = this.wordsBeside(place);
    if (name === undefined) return;
    const key = `${name.toLowerCase()}\n${label}`;
    const doses = this.#doses.get(key) ?? new Map<string, Dose>();
    const row = `${sheet}\n${top}`;
    if (!doses.has(row)) doses.set(row, { name, value, place });
    this.#doses.set(key, doses);
  }

  /** The nearest text to the left that is no unit: the beer or the label that the row is about. */
  private wordsBeside({ sheet, top, left }: RangeReference): string | undefined {
    for (let column = left - 1; column >= 0; column--) {
      const text = this.snapshot.cell('values', sheet, top, column);
      if (typeof text === 'string' && text.trim() !== '' && !(text.trim() in UNITS)) return text.trim();
    }
    return undefined;
  }

  findings(): readonly Finding[] {
    const typed = [...this.#typed.values()].filter(({ places }) => places.length >= MANY);
    const constants = typed.map(({ subject, value, unit, places }): Finding => {
      const [place, ...rest] = places as [RangeReference, ...RangeReference[]];
      return { kind: 'constant', place, subject, figures: { value, unit, places: rest } };
    });
    const doses = [...this.#doses.values()].flatMap((rows): Finding[] => {
      const [first, ...rest] = [...rows.values()] as [Dose, ...Dose[]];
      const other = rest.find(({ value }) => value !== first.value);
      if (!other) return [];
      const { value, place, name } = first;
      return [
        {
          kind: 'dose',
          place: other.place,
          subject: name,
          figures: { value: other.value, other: value, unit: DOSE, places: [place] },
        },
      ];
    });
    return [...doses, ...constants];
  }
}
