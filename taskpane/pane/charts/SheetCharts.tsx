import { useEffect, useState } from 'preact/hooks';
import type { Host, ShownChart } from '../../host/host.js';
import { Heading } from '../Heading.js';
import { useReading } from '../picture/useReading.js';
import { useSetting } from '../setting.js';

/** The charts of the shown sheet, kept up to date; drawn here where the workbook itself cannot. */
export function SheetCharts({ host }: { readonly host: Host }) {
  const { texts, formats } = useSetting();
  const [charts, setCharts] = useState<readonly ShownChart[]>([]);
  const [open, setOpen] = useState(false);
  useEffect(() => host.onCharts?.(setCharts), [host]);
  const reading = useReading(open && charts.length > 0);
  if (charts.length === 0) return null;
  return (
    <details class="pb-explained" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <Heading level={2}>{texts.charts.heading(formats.count(charts.length))}</Heading>
      </summary>
      {open &&
        reading &&
        charts.map((chart) => {
          const picture = reading.sheetPicture(chart, texts.charts, formats);
          if (picture) return <reading.PictureFigure key={chart.title} picture={picture} lang="en" />;
          return (
            <p key={chart.title} class="pb-quiet">
              <span lang="en">{chart.title}.</span> {texts.charts.nothing}
            </p>
          );
        })}
    </details>
  );
}
