import { useEffect, useId, useRef } from 'preact/hooks';
import type { Texts } from '../../texts/texts.js';
import type { AskedNote } from '../grid/notes.js';

interface Props {
  readonly note: AskedNote;
  readonly words: Texts['workbook'];
  onClose(): void;
}

/** Writes, changes or deletes the note of one cell. Escape leaves it as it was, Ctrl+Enter saves it. */
export function NoteDialog({ note, words, onClose }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  const field = useRef<HTMLTextAreaElement>(null);
  const id = useId();
  const { note: own, cancel } = words;
  useEffect(() => {
    dialog.current?.showModal();
    field.current?.focus();
  }, []);
  const leave = (text?: string) => {
    if (text !== undefined && text !== note.text) note.write(text);
    dialog.current?.close();
  };
  const save = () => leave(field.current?.value.trim() ?? '');
  const key = (event: KeyboardEvent) => {
    // The cells would take it for themselves.
    event.stopPropagation();
    if (event.key !== 'Enter' || !(event.ctrlKey || event.metaKey)) return;
    event.preventDefault();
    save();
  };
  return (
    <dialog ref={dialog} class="workbook-dialog" aria-labelledby={id} onClose={onClose} onKeyDown={key}>
      <h2 id={id}>{own.title(note.address)}</h2>
      <textarea ref={field} class="workbook-note" rows={6} aria-labelledby={id} defaultValue={note.text} />
      <div class="workbook-dialog-answers">
        {note.text !== '' && (
          <button type="button" onClick={() => leave('')}>
            {own.remove}
          </button>
        )}
        <button type="button" onClick={() => leave()}>
          {cancel}
        </button>
        <button type="button" class="workbook-strong" onClick={save}>
          {own.save}
        </button>
      </div>
    </dialog>
  );
}
