import { families } from '../src/catalogue.js';
import { codeFiles } from './files.js';
import { type Graph, importGraph } from './imports.js';

/** The rooms of the house, lowest first: which files each holds (the first match counts), and what for. */
const ROOMS: readonly (readonly [name: string, files: RegExp, holds: string])[] = [
  ['src/core', /^src\/core\//, 'what a calculation is: declaration, units, reading, evaluation, refusal'],
  ['src/numerics', /^src\/numerics\//, 'root, regression, robust slope, quantiles, sampling'],
  ['src/errors', /^src\/errors\//, 'how sure fitted figures are, and how a report says so'],
  [
    'src/quantities',
    /^src\/(?:\w*[qQ]uantit\w+|cautions)\.ts$/,
    'quantities that several calculations read; the words of cautions',
  ],
  ['src/sheets', /^src\/sheets\//, 'starter sheets as data'],
  ['src/catalogue', /^src\/\w+\.ts$/, 'the list of calculations, and the face for programs'],
  ['functions', /^functions\//, 'the worksheet face: cells and ranges in, values or errors out; metadata'],
  ['taskpane/formula', /^taskpane\/formula\//, 'reads a formula, and what its references hold'],
  ['taskpane/texts', /^taskpane\/texts\//, 'the words of the pages, one file a language'],
  ['taskpane/host/excel', /^taskpane\/host\/excel/, 'Excel’s side of the interface'],
  ['taskpane/host/embedded', /^taskpane\/host\/embedded/, 'the embedded workbook’s side of it'],
  ['taskpane/host', /^taskpane\/host\//, 'one interface to a workbook'],
  ['taskpane/pane', /^taskpane\/pane\/(?!excel\.tsx)/, 'the side pane: functions, pictures, check, sheets'],
  ['the pane’s page', /^taskpane\/pane\/excel\.tsx$/, 'the page that Excel opens'],
  ['taskpane/workbook/engine', /^taskpane\/workbook\/engine\//, 'the one door to the grid engine, and its words'],
  ['taskpane/workbook/entry', /^taskpane\/workbook\/entry\//, 'what someone types into a cell'],
  ['taskpane/workbook/formula', /^taskpane\/workbook\/formula\//, 'the functions as the grid calls them'],
  [
    'taskpane/workbook/calculation',
    /^taskpane\/workbook\/calculation\//,
    'the thread that calculates, and the page’s side of it',
  ],
  ['taskpane/workbook/xlsx', /^taskpane\/workbook\/xlsx\//, 'workbooks from and to .xlsx files'],
  ['taskpane/workbook/grid', /^taskpane\/workbook\/\w+\//, 'the embedded workbook: grid, bars, saving'],
  ['the workbook’s page', /^taskpane\/workbook\//, 'the page that a browser opens'],
];

/** A folder of `src` without a line of its own above is a family of calculations. */
export function roomOf(file: string): string {
  const [, family] = /^src\/(\w+)\//.exec(file) ?? [];
  return ROOMS.find(([, files]) => files.test(file))?.[0] ?? (family === undefined ? file : `src/${family}`);
}

/** Every file that ends in the site or in the library. */
export const builtFiles = codeFiles.filter((name) => /^(?:src|functions|taskpane)\//.test(name));

/** What each room imports of other rooms, types included. */
export function roomGraph(): Graph {
  const rooms = new Map<string, Set<string>>();
  for (const [file, imports] of importGraph(builtFiles)) {
    const own = roomOf(file);
    const others = rooms.get(own) ?? new Set();
    rooms.set(own, others);
    for (const other of imports.map(roomOf)) if (other !== own) others.add(other);
  }
  return new Map(
    [...rooms].sort(([one], [other]) => (one < other ? -1 : 1)).map(([name, others]) => [name, [...others].sort()]),
  );
}

/** What a room reaches in one step or many. */
function reached(from: string, graph: Graph, seen = new Set<string>()): ReadonlySet<string> {
  for (const next of graph.get(from) ?? []) {
    if (seen.has(next)) continue;
    seen.add(next);
    reached(next, graph, seen);
  }
  return seen;
}

/** The picture of the rooms for a page that draws mermaid: an arrow that a longer way implies is left out. */
export function picture(graph: Graph = roomGraph()): string {
  const names = [...graph.keys()];
  const id = (name: string) => `room${names.indexOf(name)}`;
  const group = (title: string, of: (name: string) => boolean) => [
    `  subgraph ${title}`,
    ...names.filter(of).map((name) => `    ${id(name)}["${name}"]`),
    '  end',
  ];
  const arrows = [...graph].flatMap(([name, others]) =>
    others
      .filter((one) => !others.some((other) => other !== one && reached(other, graph).has(one)))
      .map((one) => `  ${id(name)} --> ${id(one)}`),
  );
  const isSource = (name: string) => name.startsWith('src/');
  const isPage = (name: string) => !isSource(name) && name !== 'functions';
  const groups = [
    ...group('taskpane', isPage),
    ...group('worksheet', (name) => name === 'functions'),
    ...group('src', isSource),
  ];
  return ['```mermaid', 'flowchart TB', ...groups, ...arrows, '```'].join('\n');
}

/** A family of calculations says itself what it holds. */
const familyHolds = (room: string): string =>
  families.find(({ name }) => name.toLowerCase().includes(room.slice('src/'.length)))?.summary ?? '';

/** The rooms as a table: what each holds and, arrows left out of the picture included, what it imports. */
export function roomTable(graph: Graph = roomGraph()): string {
  const holds = new Map(ROOMS.map(([name, , what]) => [name, what]));
  const rows = [...graph].map(
    ([name, others]) => `| ${name} | ${holds.get(name) ?? familyHolds(name)} | ${others.join(', ')} |`,
  );
  return ['| room | what it holds | imports |', '| --- | --- | --- |', ...rows].join('\n');
}
