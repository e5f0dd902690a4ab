import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { ShownChart } from '../../host/shownChart.js';
import { useSetting } from '../../pane/setting.js';
import type { Box } from '../grid/chartPlace.js';
import { ChartDrawing } from './ChartDrawing.js';
import { dragged, GRIPS, type Grip, stepped, WHOLE } from './grip.js';
import { styleOf } from './styleOf.js';

/** Around the drawing, and the line of the title above it. */
const [PADDING, TITLE] = [8, 24];

interface Props {
  readonly chart: ShownChart;
  readonly box: Box;
  readonly zoom: number;
  /** Where the keys are explained. */
  readonly hint: string;
  /** Another page has the workbook: the chart can be seen, not changed. */
  readonly fixed: boolean;
  /** The same box as far as the sheet reaches. */
  within(box: Box): Box;
  onMove(box: Box): void;
  onRemove(): void;
  onFocus(): void;
  onLeave(): void;
  onStep(back: boolean): void;
}

const same = (one: Box, other: Box): boolean =>
  one.left === other.left && one.top === other.top && one.width === other.width && one.height === other.height;

/** One chart on the sheet: a hand or the keys move and size it. */
export function SheetChart(props: Props) {
  const { chart, box, zoom, hint, fixed, within, onMove, onRemove, onFocus, onLeave, onStep } = props;
  const { texts } = useSetting();
  const [draft, setDraft] = useState<Box>();
  const held = useRef<{ grip: Grip; x: number; y: number; from: Box } | undefined>(undefined);
  /** What was handed on already; the page hears of its own change a moment later. */
  const sent = useRef<Box | undefined>(undefined);
  // Once it stands where it was left, the page follows the sheet again.
  useLayoutEffect(() => setDraft(undefined), [box.left, box.top, box.width, box.height]);
  const at = draft ?? box;
  const settle = () => {
    held.current = undefined;
    if (!draft || sent.current === draft) return;
    sent.current = draft;
    if (same(draft, box)) setDraft(undefined);
    else onMove(draft);
  };
  const take = (grip: Grip) => (event: PointerEvent) => {
    event.stopPropagation();
    if (fixed || event.button !== 0) return;
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    held.current = { grip, x: event.clientX, y: event.clientY, from: at };
  };
  const move = ({ clientX, clientY }: PointerEvent) => {
    if (!held.current) return;
    const { grip, x, y, from } = held.current;
    setDraft(within(dragged(from, grip, (clientX - x) / zoom, (clientY - y) / zoom)));
  };
  const key = (event: KeyboardEvent) => {
    if (event.target !== event.currentTarget) return;
    const { key: pressed, ctrlKey, metaKey, shiftKey } = event;
    const next = fixed ? undefined : stepped(at, event);
    if (next) setDraft(within(next));
    else if (!fixed && (pressed === 'Delete' || pressed === 'Backspace')) onRemove();
    else if (pressed === 'Escape') onLeave();
    else if ((ctrlKey || metaKey) && /^[zy]$/i.test(pressed)) onStep(pressed.toLowerCase() === 'z' && !shiftKey);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  const hands = { onPointerMove: move, onPointerUp: settle, onPointerCancel: () => setDraft(undefined) };
  return (
    // biome-ignore-start lint/a11y/noNoninteractiveTabindex lint/a11y/noNoninteractiveElementInteractions: the keys move it.
    <figure
      class="sheet-chart"
      tabIndex={0}
      aria-label={chart.title}
      aria-describedby={fixed ? undefined : hint}
      style={styleOf(at)}
      onKeyDown={key}
      onKeyUp={() => !held.current && settle()}
      onBlur={() => !held.current && settle()}
      onFocus={onFocus}
      onPointerDown={take(WHOLE)}
      {...hands}
    >
      <figcaption title={chart.title}>{chart.title}</figcaption>
      <ChartDrawing
        chart={chart}
        width={Math.round(at.width - 2 * PADDING)}
        height={Math.round(at.height - 2 * PADDING - TITLE)}
      />
      {!fixed && (
        <>
          <button
            type="button"
            class="sheet-chart-remove"
            title={texts.charts.remove}
            aria-label={`${texts.charts.remove}: ${chart.title}`}
            onPointerDown={(event) => event.stopPropagation()}
            onClick={onRemove}
          >
            ×
          </button>
          {GRIPS.map((grip) => (
            <span
              key={`${grip.x} ${grip.y}`}
              class="sheet-chart-grip"
              data-x={grip.x}
              data-y={grip.y}
              onPointerDown={take(grip)}
            />
          ))}
        </>
      )}
    </figure>
    // biome-ignore-end lint/a11y/noNoninteractiveTabindex lint/a11y/noNoninteractiveElementInteractions: see above.
  );
}
