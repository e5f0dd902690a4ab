import { catalogue } from '../../src/catalogue.js';
import { evaluateCells, type Handed } from '../../src/core/evaluate.js';
import type { Cells } from '../../taskpane/host/host.js';
import type { Reference } from '../../taskpane/host/reference.js';
import { layOut } from '../../taskpane/pane/form/block.js';
import { exampleDraft } from '../../taskpane/pane/form/draft.js';
import { readDraft } from '../../taskpane/pane/form/readDraft.js';
import { formatsFor } from '../../taskpane/pane/formats.js';
import { draw } from '../../taskpane/pane/picture/draw.js';
import { speechFor } from '../../taskpane/pane/picture/speech.js';
import { settingFor } from '../../taskpane/pane/setting.js';
import { de } from '../../taskpane/texts/de.js';
import { en } from '../../taskpane/texts/en.js';
import { languageOf } from '../../taskpane/texts/texts.js';

export const calculationOf = (id: string) => {
  const found = catalogue.find((one) => one.id === id);
  if (!found) throw new Error(`There is no ${id}.`);
  return found;
};

const { formats, writing } = settingFor(en, 'en-GB', 'embedded');

/** The inputs of an example as the pane lays them out, some of them given otherwise. */
function handedFor(id: string, changed: Readonly<Record<string, Handed>>): Readonly<Record<string, Handed>> {
  const calculation = calculationOf(id);
  return { ...readDraft(calculation, exampleDraft(calculation, formats), writing).handed, ...changed };
}

/** What the library answers to an example, some of its inputs given otherwise. */
export const answered = (id: string, changed: Readonly<Record<string, Handed>> = {}) =>
  evaluateCells(calculationOf(id), handedFor(id, changed));

/** A sheet of cells from A1 on, as a host reads it; every reading is counted. */
export function sheetOf(rows: Cells) {
  const host = {
    readings: 0,
    read: async (references: readonly Reference[]) => {
      host.readings += 1;
      return references.map((reference) => {
        if (reference.kind !== 'range') return undefined;
        const { top, left, bottom, right } = reference;
        return Array.from({ length: (bottom ?? rows.length - 1) - top + 1 }, (_, row) =>
          Array.from({ length: (right ?? 0) - left + 1 }, (__, column) => rows[top + row]?.[left + column] ?? null),
        );
      });
    },
  };
  return host;
}

const a1 = (row: number, column: number) => `${String.fromCharCode(65 + column)}${row + 1}`;

/** The example of a calculation as the pane puts it into a sheet: the cells, and its formula. */
export function exampleSheet(id: string, changed: Readonly<Record<string, Handed>> = {}) {
  const calculation = calculationOf(id);
  const handed = handedFor(id, changed);
  const { block, formula } = layOut(calculation, handed);
  const cells = block.rows.map((row) => row.map((one) => one.number ?? one.text ?? null));
  const text = block.rows[formula[0]]?.[formula[1]]?.formula?.(a1) ?? '';
  return { host: sheetOf(cells), formula: text };
}

export const speechIn = (locale: string) =>
  speechFor((languageOf(locale) === 'de' ? de : en).picture, formatsFor(locale));

export const drawn = (formula: string, host: ReturnType<typeof sheetOf>, locale = 'en-GB') =>
  draw({ sheet: 'Sheet1', address: 'Z1', formula, value: null }, host, speechIn(locale));

/** The picture of an example; fails where there is none. */
export async function pictureOf(id: string, changed: Readonly<Record<string, Handed>> = {}, locale = 'en-GB') {
  const { host, formula } = exampleSheet(id, changed);
  const found = await drawn(formula, host, locale);
  if (found?.kind !== 'picture') throw new Error(`${id} has no picture: ${JSON.stringify(found)}`);
  return found.picture;
}
