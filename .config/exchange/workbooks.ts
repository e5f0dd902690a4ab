import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { differences, judged, type Notice } from '../../tests/exchange/compare.js';
import { factsIn } from '../../tests/exchange/facts/workbook.js';
import { flat } from '../../tests/exchange/made/flat.js';
import { CORPUS } from '../../tests/exchange/made/index.js';
import { large } from '../../tests/exchange/made/large.js';
import { bytesOfMade } from '../../tests/exchange/make.js';
import { bundledForNode } from '../forNode.js';
import type { Compared } from './compared.js';
import { factsByOpenpyxl, makeByOpenpyxl, recalculated } from './programs.js';
import { workbooksPage } from './workbooksPage.js';

interface Given {
  readonly name: string;
  readonly maker: string;
  readonly bytes: Uint8Array;
}

const ROWS = 20_000;

/** Every workbook of the corpus as the bytes of a file. */
function given(folder: string): Given[] {
  const made = Object.entries({ ...CORPUS, 'many rows': large(ROWS) }).map(([name, one]) => ({
    name,
    maker: 'part by part',
    bytes: bytesOfMade(one),
  }));
  const fromOthers = (maker: string, names: readonly string[]) =>
    names.map((name) => ({ name, maker, bytes: new Uint8Array(readFileSync(join(folder, `${name}.xlsx`))) }));
  makeByOpenpyxl(folder);
  writeFileSync(join(folder, 'sizes and shares.fods'), flat);
  writeFileSync(join(folder, 'figures.csv'), 'day,volume,text\n2025-01-07,407.5,"a, b"\n2025-01-08,414,=1+1\n');
  recalculated(
    ['sizes and shares.fods', 'figures.csv'].map((name) => join(folder, name)),
    folder,
  );
  return [
    ...made,
    ...fromOthers('openpyxl', ['daily runs', 'rules and notes', 'charts']),
    ...fromOthers('LibreOffice', ['sizes and shares', 'figures']),
  ];
}

const valuesIn = (file: string) => factsIn(new Uint8Array(readFileSync(file))).filter(({ kind }) => kind === 'value');

/** Opens each workbook in the grid, saves it, opens and saves it again, and reads all of them in other programs. */
export async function compared(): Promise<Compared[]> {
  const { throughGrid } = await bundledForNode<typeof import('../exchangeEntry.js')>('exchange');
  const folder = mkdtempSync(join(tmpdir(), 'exchange-'));
  const [before, after, others] = ['before', 'after', 'others'].map((name) => join(folder, name)) as [
    string,
    string,
    string,
  ];
  for (const name of [before, after, others]) mkdirSync(join(name, 'calculated'), { recursive: true });
  const all: { one: Given; file: string; once: Uint8Array; twice: Uint8Array; told: readonly Notice[] }[] = [];
  for (const [n, one] of given(others).entries()) {
    const { bytes: once, told } = await throughGrid(one.bytes);
    const { bytes: twice } = await throughGrid(once);
    const file = `${n}.xlsx`;
    writeFileSync(join(before, file), one.bytes);
    writeFileSync(join(after, file), once);
    all.push({ one, file, once, twice, told });
  }
  for (const place of [before, after])
    recalculated(
      all.map(({ file }) => join(place, file)),
      join(place, 'calculated'),
    );
  const [readBefore, readAfter] = [before, after].map((place) => {
    const facts = factsByOpenpyxl(all.map(({ file }) => join(place, file)));
    return new Map([...facts].map(([file, list]) => [basename(file), list]));
  });
  const answer = all.map(({ one: { name, maker, bytes }, file, once, twice, told }): Compared => {
    const facts = factsIn(bytes);
    const saved = factsIn(once);
    const [valuesBefore, valuesAfter] = [before, after].map((place) => valuesIn(join(place, 'calculated', file)));
    return {
      name,
      maker,
      facts: facts.length,
      differences: judged(differences(facts, saved), told),
      openpyxl: judged(differences(readBefore?.get(file) ?? [], readAfter?.get(file) ?? []), told),
      second: differences(saved, factsIn(twice)),
      calculated: valuesBefore?.length ?? 0,
      otherwise: differences(valuesBefore ?? [], valuesAfter ?? []),
    };
  });
  rmSync(folder, { recursive: true, force: true });
  return answer;
}

/** The section on workbooks of docs/exchange.md, and what must not be. */
export async function workbooks(): Promise<{ section: string; failures: readonly string[] }> {
  return workbooksPage(await compared());
}
