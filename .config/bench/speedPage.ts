import { cpus } from 'node:os';
import { comparisonTable, shownTime } from './table.js';
import type { Row } from './timing.js';

interface Measured {
  readonly functions: readonly Row[];
  readonly recalculations: readonly Row[];
  readonly loads: readonly Row[];
  readonly growth: string;
  readonly sizes: string;
}

function missed(rows: readonly Row[]): string {
  const late = rows.filter(({ time, referenceTime, aim }) => aim !== undefined && time / referenceTime > aim);
  if (late.length === 0) return 'Every aim was met in this run.';
  const one = ({ title, time, referenceTime, aim }: Row) =>
    `- ${title}: ${(time / referenceTime).toFixed(2)} in place of ${aim} (${shownTime(time)}).`;
  return ['Aims missed in this run:', '', ...late.map(one)].join('\n');
}

/** The page docs/speed.md: what one run of the bench has measured. */
export function speedPage({ functions, recalculations, loads, growth, sizes }: Measured): string {
  const [{ model = 'unknown processor' } = {}] = cpus();
  const date = new Date().toISOString().slice(0, 10);
  return `# Speed

One run of \`npm run bench -- --write\`, ${date}: Node ${process.version} on ${cpus().length} cores, ${model}. Times hang on the
machine; a ratio hangs on it less, since both sides are timed in the same run, in turn. A time is the least of its rounds,
after both sides have run long enough to be compiled. An aim is the ratio that we wish not to pass.

${missed([...functions, ...recalculations, ...loads])}

## Functions

The built \`functions.js\`, called as a host calls it: cells in, cells out. "Bare" is the same arithmetic in a loop, nothing
checked and nothing named; zod checks the same limits.

${comparisonTable(functions)}

## How the time grows

${growth}

## The embedded workbook

All 10,000 masses of a sheet are changed; the time runs until five columns are new, in Chromium.

${comparisonTable(recalculations)}

## First load

From navigation in a browser that has never seen the page, served from the same machine; the median of seven loads. The
engine's bare page has the same plugins and an empty sheet, and nothing of ours.

${comparisonTable(loads)}

## Sizes

Scripts and styles of the build. What loads later is counted with its part.

${sizes}
`;
}
