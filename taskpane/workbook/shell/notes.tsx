import { useEffect, useState } from 'preact/hooks';
import type { AskedNote } from '../grid/notes.js';
import type { OpenedWorkbook } from '../grid/opened.js';
import type { Store } from './state.js';
import { useWords } from './words.js';

type Loaded = typeof import('./noteDialog.js');

/** The dialog of a note, which loads when it is first asked for. */
export function Notes({ workbook, store }: { readonly workbook: OpenedWorkbook; readonly store: Store }) {
  const texts = useWords();
  const [loaded, load] = useState<Loaded>();
  const [note, ask] = useState<AskedNote>();
  useEffect(() => {
    workbook.notes.onAsk((asked) => {
      import(/* webpackChunkName: "note" */ './noteDialog.js').then(
        (part) => {
          load(part);
          ask(asked);
        },
        () => store.tell(texts.format.notLoaded),
      );
    });
  }, [workbook]);
  if (!loaded || !note) return null;
  const close = () => {
    ask(undefined);
    workbook.focus();
  };
  return <loaded.NoteDialog key={note.address} note={note} words={texts.workbook} onClose={close} />;
}
