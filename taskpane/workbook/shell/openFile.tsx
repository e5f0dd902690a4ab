import { useRef, useState } from 'preact/hooks';
import { Dialog } from './dialog.js';
import { useDrop } from './drop.js';
import { type ReadFile, readFile } from './readFile.js';
import type { Store } from './state.js';
import { useWords } from './words.js';

interface Props {
  readonly store: Store;
  readonly ready: boolean;
  /** Puts what was read in the place of the present workbook. */
  onOpen(file: ReadFile): Promise<void>;
}

/** The button that opens an .xlsx file, and the question before it takes this workbook's place. */
export function OpenFile({ store, ready, onOpen }: Props) {
  const { open: words } = useWords();
  const [reading, setReading] = useState<AbortController>();
  const [read, setRead] = useState<ReadFile>();
  /** Takes the notice of the last file away, where that one was refused. */
  const refused = useRef(() => {});
  const field = useRef<HTMLInputElement>(null);
  useDrop((file) => {
    if (ready && !read) void choose(file);
  });

  async function choose(file: File | undefined) {
    if (field.current) field.current.value = '';
    if (!file || reading) return;
    refused.current();
    const stop = new AbortController();
    setReading(stop);
    try {
      const answer = await readFile(file, words, stop.signal);
      if ('refusal' in answer) refused.current = store.tell(words.refused(file.name, answer.refusal));
      else setRead(answer);
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
        accept=".xlsx"
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
    </>
  );
}
