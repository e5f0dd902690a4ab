import { useEffect, useId, useState } from 'preact/hooks';
import { ENCODINGS } from '../text/decode.js';
import type { ReadText, TextChoices } from '../text/readText.js';
import { SEPARATORS } from '../text/rows.js';
import { Dialog } from './dialog.js';
import { readTextFile } from './readFile.js';
import { TextPreview } from './textPreview.js';
import { useWords } from './words.js';

interface Props {
  readonly file: File;
  readonly read: ReadText;
  onInsert(sheet: ReadText['sheet']): void;
  onClose(): void;
}

interface ChoiceProps<T extends string> {
  readonly label: string;
  readonly value: T;
  readonly choices: readonly (readonly [value: T, label: string])[];
  onChoose(value: T): void;
}

function Choice<T extends string>({ label, value, choices, onChoose }: ChoiceProps<T>) {
  const id = useId();
  return (
    <div>
      <label for={id}>{label}</label>{' '}
      <select id={id} value={value} onChange={({ currentTarget }) => onChoose(currentTarget.value as T)}>
        {choices.map(([one, name]) => (
          <option key={one} value={one}>
            {name}
          </option>
        ))}
      </select>
    </div>
  );
}

/** What was understood of a text file, each of it to be changed, before its rows go onto a new sheet. */
export function TextDialog({ file, read: first, onInsert, onClose }: Props) {
  const { open: words } = useWords();
  const { text } = words;
  const [read, setRead] = useState(first);
  const [choices, setChoices] = useState<TextChoices>({});
  const [busy, setBusy] = useState(false);
  const [refused, setRefused] = useState('');
  useEffect(() => {
    if (Object.keys(choices).length === 0) return;
    const stop = new AbortController();
    setBusy(true);
    readTextFile(file, words, choices, stop.signal)
      .then((answer) => {
        setRefused('refusal' in answer ? answer.refusal : '');
        if (!('refusal' in answer)) setRead(answer);
        setBusy('refusal' in answer);
      })
      .catch(() => {
        if (!stop.signal.aborted) setRefused(words.damaged);
      });
    return () => stop.abort();
  }, [choices]);
  const choose = (change: TextChoices) => setChoices({ ...choices, ...change });
  const orders = (['dmy', 'mdy', 'ymd'] as const).map((one) => [one, text.orders[one]] as const);
  const headers = Array.from({ length: Math.min(20, read.rows) + 1 }, (_, count) => [`${count}`, `${count}`] as const);
  return (
    <Dialog
      title={text.title(file.name)}
      confirm={text.confirm}
      wide
      busy={busy}
      onConfirm={() => onInsert(read.sheet)}
      onClose={onClose}
    >
      <p>{text.understood}</p>
      <div class="workbook-text-choices">
        <Choice
          label={text.separator}
          value={read.separator}
          choices={SEPARATORS.map((one) => [one, text.separators[one]])}
          onChoose={(separator) => setChoices({ encoding: read.encoding, separator })}
        />
        <Choice
          label={text.decimal}
          value={read.decimal}
          choices={[
            ['.', text.point],
            [',', text.comma],
          ]}
          onChoose={(decimal) => choose({ decimal })}
        />
        <Choice label={text.order} value={read.order} choices={orders} onChoose={(order) => choose({ order })} />
        <Choice
          label={text.headerRows}
          value={`${read.headerRows}`}
          choices={headers}
          onChoose={(count) => choose({ headerRows: Number(count) })}
        />
        <Choice
          label={text.encoding}
          value={read.encoding}
          choices={ENCODINGS.map((one) => [one, text.encodings[one]])}
          onChoose={(encoding) => setChoices({ encoding })}
        />
      </div>
      <div role="status">
        {refused && <p>{words.refused(file.name, refused)}</p>}
        {read.open !== undefined && <p>{text.open(read.open)}</p>}
        {read.openDate !== undefined && <p>{text.openDate(read.openDate)}</p>}
        {read.cut && <p>{words.leftOut(words.parts.longTexts)}</p>}
      </div>
      <TextPreview
        read={read}
        onText={(column, isText) => {
          const others = (choices.asText ?? []).filter((one) => one !== column);
          choose({ asText: isText ? [...others, column] : others });
        }}
      />
    </Dialog>
  );
}
