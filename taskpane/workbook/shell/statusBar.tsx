import { useEffect, useState } from 'preact/hooks';
import type { OpenedWorkbook } from '../grid/opened.js';
import type { Summary } from '../grid/summary.js';
import { useWords } from './words.js';

const SIZES = [0.5, 0.75, 0.9, 1, 1.25, 1.5, 2];
/** Enough digits to check a sum by, few enough that no rounding of the machine shows. */
const DIGITS = { maximumSignificantDigits: 12 };

/** What the selected cells come to, and how large the sheet is drawn. */
export function StatusBar({ workbook, language }: { workbook?: OpenedWorkbook; language: string }) {
  const { format: words, workbook: page } = useWords();
  const [summary, setSummary] = useState<Summary>();
  const [zoom, setZoom] = useState(1);
  useEffect(() => workbook?.onSummary(setSummary), [workbook]);
  useEffect(() => workbook?.zoom.watch(setZoom), [workbook]);
  const written = new Intl.NumberFormat(language, DIGITS);
  const percent = new Intl.NumberFormat(language, { style: 'percent' });
  const { count = 0, numbers = 0, sum = 0 } = summary ?? {};
  const sizes = SIZES.includes(zoom) ? SIZES : [...SIZES, zoom].sort((a, b) => a - b);
  return (
    <div class="workbook-status">
      <p class="workbook-keys">
        <kbd>F6</kbd> {page.keys}
      </p>
      <output class="workbook-summary" aria-label={words.status} aria-live="off">
        {count > 1 && (
          <>
            {numbers > 0 && <span>{words.sum(written.format(sum))}</span>}
            {numbers > 0 && <span>{words.average(written.format(sum / numbers))}</span>}
            <span>{words.count(written.format(count))}</span>
          </>
        )}
      </output>
      <select
        aria-label={words.zoom}
        title={words.zoom}
        value={String(zoom)}
        disabled={!workbook}
        onChange={({ currentTarget }) => workbook?.zoom.set(Number(currentTarget.value))}
      >
        {sizes.map((size) => (
          <option key={size} value={String(size)}>
            {percent.format(size)}
          </option>
        ))}
      </select>
    </div>
  );
}
