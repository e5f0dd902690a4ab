import { columnOf, reportOf } from '../cake/log.js';
import { byLabel, type Changed, columnsOf, rowsOf } from '../plan/columns.js';

/** Feed trials: dry body feeds that are bought dry. */
export const FEEDS = [60, 90, 120, 160] as const;

/** Without stabiliser, so that the two permeabilities are all that is looked for. */
const BEER: Changed = { stabiliserDose: 0, stabiliserPermeability: undefined, aidMoisture: 0, cakeSpace: 20 };
const TRUTH = { aidPermeability: 0.1, beerSolidsPermeability: 1e-4 };

export interface Made {
  readonly compressibility: number;
  readonly septumRadius: number;
  readonly precoatLoad: number;
}

const plan = (made: Made, changed: Changed) => columnsOf({ ...BEER, ...made, ...changed });

const answers = (made: Made, changed: Changed) => {
  const columns = plan(made, changed);
  return {
    run: rowsOf('RUNLENGTH', ...columns)[0]?.[0] as number,
    best: byLabel(rowsOf('BESTFEED', ...columns, 30, 400)).get('Body feed of least cost g/hL')?.[0] as number,
  };
};

/** The log of a run with these true permeabilities. */
export const logOf = (made: Made, bodyFeed: number, points = 30) =>
  rowsOf('RUNCURVE', ...plan(made, { ...TRUTH, bodyFeed }), points)
    .slice(1)
    .map(([volume, , bar]) => [volume as number, bar as number] as const);

const septum = (made: Made) => [made.septumRadius, 300, made.precoatLoad];

/** Rigid cakes: FITRUN of each log, its mean rise and the hours of the log into FITFEED. */
function byFitRun(made: Made) {
  const fits = FEEDS.map((feed) => {
    const log = logOf(made, feed).slice(2);
    const [volumes, bars] = [log.map(([volume]) => volume), log.map(([, bar]) => bar)];
    const report = reportOf('FITRUN', volumes, bars, 50, 250, 2.8, feed + 25, ...septum(made));
    return [report['Rise bar/h'], (volumes.at(-1) ?? 0) / 250, (volumes[0] ?? 0) / 250];
  });
  return fits;
}

/** Compressible cakes: all logs below one another into FITCAKES. */
function byFitCakes(made: Made) {
  const rows = FEEDS.flatMap((feed, run) => logOf(made, feed).map(([volume, bar]) => [run, volume, bar, feed + 25]));
  const column = (index: number) => columnOf(rows.map((row) => row[index]));
  const table = rowsOf('FITCAKES', column(0), column(1), column(2), 50, 250, 2.8, column(3), ...septum(made));
  const at = (label: string) => (table[0] as string[]).indexOf(label);
  const exponent = Number(table[1]?.[at('Exponent of all')]);
  const fits = table
    .slice(1)
    .map((row) => ['Rise bar/h', 'Rise read until h', 'Rise read from h'].map((one) => row[at(one)]));
  return { exponent, fits };
}

export interface Outcome {
  readonly run: number;
  readonly best: number;
}

/** What the truth gives, and what a chain of fits from made logs gives in its place. */
export function chained(made: Made, way: 'FITRUN' | 'FITCAKES'): { readonly truth: Outcome; readonly found: Outcome } {
  const { exponent, fits } = way === 'FITRUN' ? { exponent: 0, fits: byFitRun(made) } : byFitCakes(made);
  const column = (index: number) => fits.map((one) => one[index]);
  const hours = [column(1), column(2)];
  const report = reportOf(
    'FITFEED',
    ...[[...FEEDS], column(0), 5, 2.8, 25, 300, null, null, made.septumRadius, made.precoatLoad, ...hours, exponent],
  );
  const fitted = {
    aidPermeability: report['Aid permeability darcy'],
    beerSolidsPermeability: report['Beer solids permeability darcy'],
  } as const;
  return {
    truth: answers(made, TRUTH),
    found: answers({ ...made, compressibility: exponent }, fitted as Changed),
  };
}
