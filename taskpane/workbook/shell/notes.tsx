import { useEffect, useState } from 'preact/hooks';
import type { AskedNote } from '../grid/notes.js';
import type { OpenedWorkbook } from '../grid/opened.js';
import { NoteDialog } from './noteDialog.js';

/** The dialog of the note that was asked for. */
export function Notes({ workbook }: { readonly workbook: OpenedWorkbook }) {
  const [note, ask] = useState<AskedNote>();
  useEffect(() => workbook.notes.onAsk(ask), [workbook]);
  if (!note) return null;
  const close = () => {
    ask(undefined);
    workbook.focus();
  };
  return <NoteDialog key={note.address} note={note} onClose={close} />;
}
