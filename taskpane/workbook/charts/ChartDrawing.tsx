import { useMemo } from 'preact/hooks';
import type { ShownChart } from '../../host/shownChart.js';
import { drawnIn } from '../../pane/picture/drawnIn.js';
import { sheetPicture } from '../../pane/picture/sheetPicture.js';
import { useSetting } from '../../pane/setting.js';

/** Size of the letters, in pixels of the sheet. */
const TEXT = 12;

interface Props {
  readonly chart: ShownChart;
  readonly width: number;
  readonly height: number;
  /** On paper nothing scrolls. */
  readonly paper?: boolean;
}

/** A chart as large as it is asked for; higher where its bars need more room, which then scrolls. */
export function ChartDrawing({ chart, width, height, paper = false }: Props) {
  const { texts, formats } = useSetting();
  const picture = useMemo(() => sheetPicture(chart, texts.charts, formats), [chart, texts, formats]);
  return useMemo(() => {
    if (!picture) return <p class="sheet-chart-nothing">{texts.charts.nothing}</p>;
    const drawn = drawnIn({ width, height, text: TEXT, number: formats.number }, picture, texts.picture);
    const svg = (
      <svg
        role="img"
        aria-label={picture.summary}
        viewBox={`0 0 ${width} ${drawn.height}`}
        width={width}
        height={drawn.height}
        font-size={TEXT}
      >
        {drawn.drawing}
      </svg>
    );
    if (paper || drawn.height <= height) return <div class="pb-drawing">{svg}</div>;
    return (
      <section
        class="pb-drawing sheet-chart-long"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard.
        tabIndex={0}
        aria-label={chart.title}
        style={{ height: `${height}px` }}
      >
        {svg}
      </section>
    );
  }, [picture, width, height, paper, texts, formats]);
}
