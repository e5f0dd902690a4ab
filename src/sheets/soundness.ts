import { type Area, areaOf, cellsIn, type Place, placeAt, placesIn } from './area.js';
import type { SheetCell } from './sheet.js';
import { addressOf, quotedText } from './verdict.js';

/** An answer, and where it says what it rests on. */
export interface Answered {
  readonly column: number;
  readonly by: number;
  /** How many rows further down. */
  readonly down?: number;
  /** Judgements of whole lists that it rests on besides. */
  readonly also?: readonly string[];
}

/** What a sheet’s answers are told by: for each cell to fill in, the cell that judges it. */
export type Judgements = ReadonlyMap<string, string>;

type Rows = readonly (readonly SheetCell[])[];

/** A range larger than any row of single figures is a list: it answers for itself, row by row. */
const LIST = 60;

const cellAt = (rows: Rows, { row, column }: Place): SheetCell | undefined => rows[row]?.[column];

/** The formula that fills a cell: its own, or that of the answer which spills into it from above or from the left. */
function filledBy(rows: Rows, place: Place): string | undefined {
  const cell = cellAt(rows, place);
  if (!cell || cell.text !== undefined || cell.number !== undefined || cell.style === 'input') return undefined;
  if (cell.formula) return cell.formula;
  for (let row = place.row; row >= 0; row--) {
    const above = cellAt(rows, { row, column: place.column });
    if (above?.formula) return above.formula;
    if (!above || above.text || above.style === 'input') break;
  }
  for (let column = place.column - 1; column >= 0; column--) {
    for (let row = place.row; row >= 0; row--) {
      const left = cellAt(rows, { row, column });
      if (left?.formula) return left.formula;
      if (!left || left.text || left.style === 'input') break;
    }
  }
  return undefined;
}

/** The judgements of every cell that a formula rests on, through whatever other formulas. */
function restsOn(rows: Rows, judgements: Judgements, formula: string): readonly Area[] {
  const seen = new Set<string>();
  const found = new Map<string, Place>();
  const follow = (text: string): void => {
    for (const area of areasIn(text)) {
      // A list’s rows judge themselves; what its formulas read besides is what all of them rest on.
      if (cellsIn(area) > LIST) {
        const address = placeAt(area);
        if (seen.has(address)) continue;
        seen.add(address);
        for (let right = 0; right < area.columns; right++) {
          const formula = cellAt(rows, { row: area.row, column: area.column + right })?.formula;
          if (formula) follow(formula);
        }
        continue;
      }
      for (const place of placesIn(area)) {
        const address = placeAt(place);
        if (seen.has(address)) continue;
        seen.add(address);
        const judgement = judgements.get(address);
        if (judgement) found.set(judgement, areaOf(judgement));
        const next = filledBy(rows, place);
        if (next) follow(next);
      }
    }
  };
  follow(formula);
  const others = new Set([...judgements.values()].filter((one) => !found.has(one)));
  return joined([...found.values()], others);
}

const areasIn = (formula: string): readonly Area[] =>
  (
    formula.replace(/"[^"]*"/g, '').match(/(?<![A-Z0-9.])\$?[A-Z]{1,2}\$?\d+(?::\$?[A-Z]{1,2}\$?\d+)?(?![\d(])/g) ?? []
  ).map(areaOf);

/** Judgements below each other as one range, where none stands between them that the answer does not rest on. */
function joined(places: readonly Place[], others: ReadonlySet<string>): readonly Area[] {
  const sorted = [...places].sort((one, other) => one.column - other.column || one.row - other.row);
  const areas: Area[] = [];
  for (const place of sorted) {
    const last = areas.at(-1);
    const between = last?.column === place.column ? { ...last, rows: place.row - last.row + 1 } : undefined;
    if (between && placesIn(between).every((one) => !others.has(placeAt(one)))) areas[areas.length - 1] = between;
    else areas.push({ ...place, rows: 1, columns: 1 });
  }
  return areas;
}

const firstOf = (look: string, ranges: readonly string[], rest: string): string =>
  ranges.reduceRight((other, range) => `IFERROR(INDEX(${range},MATCH("${look}*",${range},0)),${other})`, rest);

/** What an answer says of itself: the first cell that is not sound, or that it has no answer, or what is odd. */
function soundnessOf(formula: string, ranges: readonly string[]): string {
  const [first] = areasIn(formula);
  const place = first ? placeAt(first) : undefined;
  const none = place
    ? `"refused: "&${addressOf(place)}&${quotedText(' has no answer: select it to read why.')}`
    : '"refused: no answer"';
  const own = formula.slice(1);
  const empty = `IF(ISERROR(${own}),${none},IF(LEN(${own})=0,${none},${firstOf('unusual', ranges, '"sound"')}))`;
  return `=${firstOf('refused', ranges, empty)}`;
}

/** The address that a judgement names. */
const namedIn = (judgement: string): string => `MID(${judgement},10,FIND(" ",${judgement}&" ",10)-10)`;

/** Shows an answer only while all that it rests on is sound; else it names the first cell that is not. */
export function madeSound(
  rows: SheetCell[][],
  answers: readonly (readonly [row: number, one: Answered])[],
  judgements: Judgements,
  at: (name: string) => string,
): void {
  for (const [row, { column, by, down = 0, also = [] }] of answers) {
    const line = rows[row] as SheetCell[];
    const cell = line[column] as SheetCell;
    const formula = cell.formula as string;
    const ranges = [...also.map(at), ...restsOn(rows, judgements, formula).map(rangeText)];
    const judge = placeAt({ row: row + down, column: by });
    const judging = rows[row + down] as SheetCell[];
    judging[by] = { ...judging[by], formula: soundnessOf(formula, ranges), style: 'note' };
    line[column] = { ...cell, formula: `=IF(LEFT(${judge},7)="refused","see "&${namedIn(judge)},${formula.slice(1)})` };
  }
}

const rangeText = (area: Area): string =>
  cellsIn(area) === 1
    ? placeAt(area)
    : `${placeAt(area)}:${placeAt({ row: area.row + area.rows - 1, column: area.column + area.columns - 1 })}`;
