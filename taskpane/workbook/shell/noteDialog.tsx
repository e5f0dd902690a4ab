import { useRef } from 'preact/hooks';
import type { AskedNote } from '../grid/notes.js';
import { Dialog } from './dialog.js';
import { useWords } from './words.js';

interface Props {
  readonly note: AskedNote;
  onClose(): void;
}

/** Writes, changes or deletes the note of one cell. Escape leaves it as it was, Ctrl+Enter saves it. */
export function NoteDialog({ note, onClose }: Props) {
  const field = useRef<HTMLTextAreaElement>(null);
  const { note: words } = useWords().workbook;
  const title = words.title(note.address);
  const save = () => {
    const text = field.current?.value.trim() ?? '';
    if (text !== note.text) note.write(text);
  };
  const key = (event: KeyboardEvent) => {
    // The cells would take it for themselves.
    event.stopPropagation();
    if (event.key !== 'Enter' || !(event.ctrlKey || event.metaKey)) return;
    event.preventDefault();
    save();
    field.current?.closest('dialog')?.close();
  };
  return (
    <Dialog
      title={title}
      confirm={words.save}
      {...(note.text === '' ? {} : { other: { label: words.remove, choose: () => note.write('') } })}
      onConfirm={save}
      onClose={onClose}
    >
      <textarea
        ref={field}
        class="workbook-note"
        rows={6}
        aria-label={title}
        defaultValue={note.text}
        onKeyDown={key}
      />
    </Dialog>
  );
}
