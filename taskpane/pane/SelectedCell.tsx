import { useEffect, useState } from 'preact/hooks';
import type { CellContent, Host, Selection } from '../host/host.js';
import { FormulaCode } from './FormulaCode.js';
import { Heading } from './Heading.js';
import { useReading } from './picture/useReading.js';
import { type Setting, useSetting } from './setting.js';

/** What is in the selected cell of the workbook, kept up to date. */
function useSelection(host: Host): Selection | undefined {
  const [selection, setSelection] = useState<Selection>();
  useEffect(() => {
    let shown = true;
    const show = (one: Selection) => {
      if (shown) setSelection(one);
    };
    const stop = host.onSelection(show);
    // A host that cannot tell yet, as while a cell is edited, calls the listener later.
    host.selection().then(show, () => {});
    return () => {
      shown = false;
      stop();
    };
  }, [host]);
  return selection;
}

const inWords = (value: CellContent, { texts, formats }: Setting): string => {
  if (typeof value === 'number') return formats.number(value, '');
  if (typeof value === 'boolean') return value ? texts.selected.yes : texts.selected.no;
  return value || texts.selected.blank;
};

/** The sentence behind an error: the host's own, or what such an error means with us. */
function sentenceOf({ message, value, formula }: Selection, { texts, host }: Setting): string | undefined {
  if (message) return message;
  if (typeof value !== 'string' || !formula?.toUpperCase().includes('POWDER.')) return undefined;
  const meaning = Object.entries(texts.help.error).find(([error]) => error === value)?.[1];
  const telling = value === '#VALUE!' || value === '#N/A';
  return meaning && (telling && host === 'excel' ? `${meaning} ${texts.help.whereExcel}` : meaning);
}

interface Props {
  readonly host: Host;
  readonly onExplain: (id: string) => void;
}

export function SelectedCell({ host, onExplain }: Props) {
  const setting = useSetting();
  const { texts } = setting;
  const selection = useSelection(host);
  const reading = useReading(selection?.formula !== undefined);
  const ids = reading?.readFormula(selection?.formula ?? '').ids ?? [];
  const [explaining, setExplaining] = useState(true);
  const sentence = selection && sentenceOf(selection, setting);
  const title = selection?.value === '#N/A' ? texts.selected.noAnswer : texts.selected.refused;
  return (
    <>
      <section class="pb-selected" aria-labelledby="pb-selected">
        <div class="pb-selected-head">
          <Heading level={2} id="pb-selected">
            {texts.selected.heading}
          </Heading>
          {selection && (
            <span>
              {selection.sheet} · <strong>{selection.address}</strong>
            </span>
          )}
        </div>
        {selection ? (
          <dl>
            {selection.formula && (
              <div>
                <dt>{texts.selected.formula}</dt>
                <dd>
                  <FormulaCode text={selection.formula} />
                </dd>
              </div>
            )}
            <div>
              <dt>{texts.selected.value}</dt>
              <dd>{inWords(selection.value, setting)}</dd>
            </div>
          </dl>
        ) : (
          <p class="pb-quiet">{texts.selected.none}</p>
        )}
        {selection?.note && (
          <p class="pb-quiet" lang="en">
            {selection.note}
          </p>
        )}
        <div aria-live="polite">
          {sentence && (
            <p class="pb-refusal">
              {selection.message && <strong>{title}. </strong>}
              <span lang={selection.message ? 'en' : undefined}>{sentence}</span>
            </p>
          )}
        </div>
        {ids.map((id) => (
          <button key={id} type="button" class="pb-link" onClick={() => onExplain(id)}>
            {texts.selected.explain(`POWDER.${id}`)}
          </button>
        ))}
        {reading && selection && ids.length > 0 && <reading.PictureOf host={host} selection={selection} />}
      </section>
      {reading && selection && ids.length > 0 && (
        <reading.Explanation host={host} selection={selection} open={explaining} onOpen={setExplaining} />
      )}
    </>
  );
}
