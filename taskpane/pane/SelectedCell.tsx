import { useEffect, useMemo, useState } from 'preact/hooks';
import { rangeText } from '../host/address.js';
import type { CellContent, Host, Selection } from '../host/host.js';
import type { Texts } from '../texts/texts.js';
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

/** An error whose sentence the host cannot tell: it may well come from another cell. */
const showsError = (selection: Selection | undefined, { help }: Texts): boolean =>
  !selection?.message && typeof selection?.value === 'string' && Object.hasOwn(help.error, selection.value);

/** The sentence behind an error: the host's own, or what such an error means with us. */
function sentenceOf(
  { message, value }: Selection,
  formula: string | undefined,
  { texts, host }: Setting,
): string | undefined {
  if (message) return message;
  if (typeof value !== 'string' || !formula?.toUpperCase().includes('POWDER.')) return undefined;
  const meaning = Object.entries(texts.help.error).find(([error]) => error === value)?.[1];
  const telling = value === '#VALUE!' || value === '#N/A';
  if (!telling) return meaning;
  // The embedded workbook knows the sentence of every refusal: without one the error was handed on.
  return host === 'excel' ? `${meaning} ${texts.help.whereExcel}` : undefined;
}

/** The cell whose formula gives what the selected one shows. */
const sourceOf = ({ spilledFrom, ...own }: Selection): Selection =>
  spilledFrom ? { ...own, formula: spilledFrom.formula, address: rangeText(spilledFrom.place) } : own;

interface Props {
  readonly host: Host;
  readonly onExplain: (id: string) => void;
}

export function SelectedCell({ host, onExplain }: Props) {
  const setting = useSetting();
  const { texts } = setting;
  const selection = useSelection(host);
  // A cell within an answer is explained by the formula that fills it.
  const source = useMemo(() => selection && sourceOf(selection), [selection]);
  const isText = host.turnIntoNumbers !== undefined && typeof selection?.value === 'string';
  const reading = useReading(source?.formula !== undefined || isText);
  const ids = reading?.readFormula(source?.formula ?? '').ids ?? [];
  const [explaining, setExplaining] = useState(true);
  const sentence = selection && sentenceOf(selection, source?.formula, setting);
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
            {source?.formula && (
              <div>
                <dt>{texts.selected.formula}</dt>
                <dd>
                  <FormulaCode text={source.formula} />
                  {selection.spilledFrom && <p class="pb-quiet">{texts.selected.filledBy(source.address)}</p>}
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
        {selection?.kept && <p class="pb-quiet">{texts.selected.kept(`=${selection.kept}`)}</p>}
        {reading && selection && host.turnIntoNumbers && <reading.TextNumber host={host} selection={selection} />}
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
        {reading && source?.formula && showsError(selection, texts) && (
          <reading.ErrorOrigin host={host} selection={source} />
        )}
        {ids.map((id) => (
          <button key={id} type="button" class="pb-link" onClick={() => onExplain(id)}>
            {texts.selected.explain(`POWDER.${id}`)}
          </button>
        ))}
        {reading && source && ids.length > 0 && <reading.PictureOf host={host} selection={source} />}
      </section>
      {reading && source && ids.length > 0 && (
        <reading.Explanation host={host} selection={source} open={explaining} onOpen={setExplaining} />
      )}
    </>
  );
}
