import { useRef, useState } from 'preact/hooks';
import type { ReadText } from '../text/readText.js';
import { Dialog } from './dialog.js';
import { useDrop } from './drop.js';
import { isTextFile, type ReadFile, readFile, readTextFile } from './readFile.js';
import type { Store } from './state.js';
import { TextDialog } from './textDialog.js';
import { useWords } from './words.js';

interface Props {
  readonly store: Store;
  readonly ready: boolean;
  /** Puts what was read in the place of the present workbook. */
  onOpen(file: ReadFile): Promise<void>;
  /** Puts the rows of a text file on a new sheet. */
  onInsert(name: string, sheet: ReadText['sheet']): void;
}

/** The button that opens a file, and what is asked before it is taken in. */
export function OpenFile({ store, ready, onOpen, onInsert }: Props) {
  const { open: words } = useWords();
  const [reading, setReading] = useState<AbortController>();
  const [read, setRead] = useState<ReadFile>();
  const [text, setText] = useState<{ readonly file: File; readonly read: ReadText }>();
  /** Takes the notice of the last file away, where that one was refused. */
  const refused = useRef(() => {});
  const field = useRef<HTMLInputElement>(null);
  useDrop((file) => {
    if (ready && !read && !text) void choose(file);
  });

  async function choose(file: File | undefined) {
    if (field.current) field.current.value = '';
    if (!file || reading) return;
    refused.current();
    const stop = new AbortController();
    setReading(stop);
    try {
      const refuse = (reason: string) => {
        refused.current = store.tell(words.refused(file.name, reason));
      };
      if (isTextFile(file)) {
        const answer = await readTextFile(file, words, {}, stop.signal);
        if ('refusal' in answer) refuse(answer.refusal);
        else setText({ file, read: answer });
      } else {
        const answer = await readFile(file, words, stop.signal);
        if ('refusal' in answer) refuse(answer.refusal);
        else setRead(answer);
      }
    } catch {
      if (!stop.signal.aborted) refused.current = store.tell(words.refused(file.name, words.damaged));
    } finally {
      setReading(undefined);
    }
  }
  const open = (file: ReadFile) => onOpen(file).catch(() => store.tell(words.storage));
  return (
    <>
      <input
        ref={field}
        type="file"
        accept=".xlsx,.csv,.tsv,.tab,.txt"
        hidden
        aria-label={words.button}
        onChange={({ currentTarget }) => void choose(currentTarget.files?.[0])}
      />
      <button type="button" disabled={!ready} onClick={() => (reading ? reading.abort() : field.current?.click())}>
        {reading ? words.stop : words.button}
      </button>
      {read && (
        <Dialog
          title={words.title(read.name)}
          confirm={words.confirm}
          onConfirm={() => void open(read)}
          onClose={() => setRead(undefined)}
        >
          <p>{words.question}</p>
          {read.leftOut && <p>{read.leftOut}</p>}
        </Dialog>
      )}
      {text && (
        <TextDialog
          {...text}
          onInsert={(sheet) => {
            onInsert(text.file.name, sheet);
            store.tell(words.text.done(text.file.name));
          }}
          onClose={() => setText(undefined)}
        />
      )}
    </>
  );
}
