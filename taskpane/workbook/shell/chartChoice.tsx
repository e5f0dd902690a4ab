import { useEffect, useState } from 'preact/hooks';
import type { OpenedWorkbook } from '../grid/opened.js';
import type { ChartKind } from '../grid/ownChart.js';
import type { Store } from './state.js';
import { useWords } from './words.js';

const KINDS = ['lines', 'points', 'bars'] as const satisfies readonly ChartKind[];

/** Gives the keys to a chart as soon as it is drawn. */
function focusChart(number: number, tries = 60) {
  const chart = document.querySelectorAll<HTMLElement>('.sheet-chart')[number];
  if (chart) chart.focus({ preventScroll: true });
  else if (tries > 0) requestAnimationFrame(() => focusChart(number, tries - 1));
}

interface Props {
  readonly workbook: OpenedWorkbook | undefined;
  readonly disabled: boolean;
  readonly store: Store;
}

/** Draws what is selected, and goes to the charts of the sheet. */
export function ChartChoice({ workbook, disabled, store }: Props) {
  const { charts: words } = useWords();
  const [titles, setTitles] = useState<readonly string[]>([]);
  useEffect(() => workbook?.charts.watch((charts) => setTitles(charts.map(({ title }) => title))), [workbook]);
  const draw = (kind: ChartKind) => {
    const refusal = workbook?.charts.draw(kind);
    if (refusal) store.tell(refusal(words));
    else focusChart(titles.length);
  };
  const chosen = ({ currentTarget }: { currentTarget: HTMLSelectElement }) => {
    const { value } = currentTarget;
    currentTarget.value = '';
    const kind = KINDS.find((one) => one === value);
    if (kind) draw(kind);
    else if (value !== '') focusChart(Number(value));
  };
  return (
    <select title={words.heading} aria-label={words.heading} value="" disabled={!workbook} onChange={chosen}>
      <option value="">{words.heading}</option>
      <optgroup label={words.draw}>
        {KINDS.map((kind) => (
          <option key={kind} value={kind} disabled={disabled}>
            {words.kinds[kind]}
          </option>
        ))}
      </optgroup>
      {titles.length > 0 && (
        <optgroup label={words.go}>
          {titles.map((title, number) => (
            <option key={number} value={number}>
              {title}
            </option>
          ))}
        </optgroup>
      )}
    </select>
  );
}
