import './charts.css';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { areaOf } from '../../../src/sheets/area.js';
import type { ShownChart } from '../../host/shownChart.js';
import { SettingContext, settingFor } from '../../pane/setting.js';
import type { Texts } from '../../texts/texts.js';
import { boxOf, within } from '../grid/chartPlace.js';
import type { OpenedWorkbook } from '../grid/opened.js';
import type { Sight } from '../grid/sight.js';
import { SheetChart } from './SheetChart.js';
import { styleOf } from './styleOf.js';

interface Props {
  readonly workbook: OpenedWorkbook;
  readonly texts: Texts;
  readonly locale: string;
  readonly fixed: boolean;
}

const HINT = 'sheet-charts-keys';
/** Room of the bars that scroll the sheet, in pixels of the page. */
const BAR = 14;

/** What is frozen stands still; what scrolls is cut off where it would lie over that. */
function plane({ header, frozenTo, scroll, zoom }: Sight, wide: boolean, high: boolean) {
  const clip = {
    left: (header.left + (wide ? frozenTo.left : 0)) * zoom,
    top: (header.top + (high ? frozenTo.top : 0)) * zoom,
  };
  const [x, y] = [header.left - (wide ? scroll.left : 0), header.top - (high ? scroll.top : 0)];
  return {
    clip: { clipPath: `inset(${clip.top}px ${BAR}px ${BAR}px ${clip.left}px)` },
    moved: { transform: `scale(${zoom}) translate(${x}px, ${y}px)` },
  };
}

/** The place of the sheet’s drawing within what the charts are laid over. */
function placeOf(drawing: HTMLElement, over: HTMLElement) {
  const [inner, outer] = [drawing.getBoundingClientRect(), over.getBoundingClientRect()];
  const { width, height } = inner;
  return styleOf({ left: inner.left - outer.left, top: inner.top - outer.top, width, height });
}

/** The charts of the shown sheet, laid over its cells: they scroll, freeze and grow with them. */
export function ChartsOnSheet({ workbook, texts, locale, fixed }: Props) {
  const setting = useMemo(() => settingFor(texts, locale, 'embedded'), [texts, locale]);
  const [charts, setCharts] = useState<readonly ShownChart[]>([]);
  const [sight, setSight] = useState<Sight>();
  const over = useRef<HTMLDivElement>(null);
  useEffect(() => workbook.charts.watch(setCharts), [workbook]);
  useEffect(() => workbook.charts.onSight(setSight), [workbook]);
  const turned = useMemo(
    () => (event: WheelEvent) => {
      const long = (event.target as Element).closest('.sheet-chart-long');
      if (long && document.activeElement === long) return;
      event.preventDefault();
      sight?.drawing.dispatchEvent(new WheelEvent(event.type, event));
    },
    [sight?.drawing],
  );
  useEffect(() => {
    const element = over.current;
    element?.addEventListener('wheel', turned, { passive: false });
    return () => element?.removeEventListener('wheel', turned);
  }, [turned]);
  const one = (chart: ShownChart, index: number, seen: Sight) => (
    <SheetChart
      key={index}
      chart={chart}
      box={boxOf(chart, seen.edges)}
      zoom={seen.zoom}
      hint={HINT}
      fixed={fixed}
      within={(box) => within(box, seen.edges)}
      onMove={(box) => workbook.charts.move(index, box)}
      onRemove={() => {
        workbook.charts.remove(index);
        workbook.focus();
      }}
      onFocus={() => workbook.charts.reveal(index)}
      onLeave={() => workbook.focus()}
      onStep={(back) => (back ? workbook.steps.back() : workbook.steps.forth())}
    />
  );
  const planes = sight
    ? [true, false].flatMap((wide) =>
        [true, false].flatMap((high) => {
          const here = charts.flatMap((chart, index) => {
            const { row, column } = areaOf(chart.place);
            const mine = wide === column >= sight.frozen.columns && high === row >= sight.frozen.rows;
            return mine ? [one(chart, index, sight)] : [];
          });
          if (here.length === 0) return [];
          const { clip, moved } = plane(sight, wide, high);
          return [
            <div key={`${wide} ${high}`} class="sheet-charts-pane" style={clip}>
              <div class="sheet-charts-plane" style={moved}>
                {here}
              </div>
            </div>,
          ];
        }),
      )
    : [];
  const holder = over.current?.parentElement;
  return (
    <SettingContext.Provider value={setting}>
      <div
        ref={over}
        class="sheet-charts pb-colours"
        hidden={planes.length === 0}
        style={sight && holder ? placeOf(sight.drawing, holder) : undefined}
      >
        {planes}
        <p id={HINT} hidden>
          {texts.charts.keys}
        </p>
      </div>
    </SettingContext.Provider>
  );
}
