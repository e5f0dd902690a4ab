import { useEffect, useState } from 'preact/hooks';
import { settingFor } from '../../pane/setting.js';
import type { Texts } from '../../texts/texts.js';
import type { OpenedWorkbook } from '../grid/opened.js';
import type { DrawChart } from './print.js';
import { useWords } from './words.js';

type Drawing = typeof import('../charts/index.js');

/** What draws charts, once it is there. */
let drawing: Drawing | undefined;

/** The charts of the sheet; what draws them loads once the workbook was calculated, and stays away where it cannot. */
export function Charts({ workbook, fixed }: { readonly workbook: OpenedWorkbook; readonly fixed: boolean }) {
  const texts = useWords();
  const [shown, show] = useState(drawing);
  useEffect(() => {
    void workbook.calculation.first
      .then(() => import(/* webpackChunkName: "charts" */ '../charts/index.js'))
      .then(
        (loaded) => {
          drawing = loaded;
          show(loaded);
        },
        () => {},
      );
  }, [workbook]);
  if (!shown) return null;
  return <shown.ChartsOnSheet workbook={workbook} texts={texts} locale={navigator.language} fixed={fixed} />;
}

export const chartsForPaper =
  (texts: Texts, locale: string): DrawChart =>
  (chart) =>
    drawing?.printedChart(chart, settingFor(texts, locale, 'embedded'));
