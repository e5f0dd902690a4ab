import { useState } from 'preact/hooks';
import { Dialog } from './dialog.js';
import { OpenFile } from './openFile.js';
import type { ReadFile } from './readFile.js';
import { SaveFile } from './saveFile.js';
import type { State, Store } from './state.js';

const savingWords: Record<State['saving'], string> = {
  loading: 'Opening the workbook …',
  saving: 'Saving …',
  saved: 'Saved in this browser',
  failed: 'Not saved: this browser keeps nothing for this page. Copy what you need before you close it.',
  elsewhere: 'Not saved: this workbook is open in another tab. Close one of the two and reload.',
};

export interface Actions {
  startAfresh(): Promise<void>;
  bringBack(): Promise<void>;
  openFile(file: ReadFile): Promise<void>;
}

type Question = 'startAfresh' | 'bringBack';

const questions: Record<Question, { title: string; confirm: string; text: string }> = {
  startAfresh: {
    title: 'Start afresh?',
    confirm: 'Start afresh',
    text: 'A new workbook with the dosing sheet takes the place of this one. This one is kept, and “Bring back” exchanges the two.',
  },
  bringBack: {
    title: 'Bring back the workbook from before?',
    confirm: 'Bring back',
    text: 'It takes the place of this one. This one is kept in turn, and “Bring back” exchanges the two again.',
  },
};

export function Bar({ state, store, actions }: { state: State; store: Store; actions: Actions }) {
  const [question, ask] = useState<Question>();
  const asked = question && questions[question];
  const ready = state.workbook !== undefined && state.saving !== 'elsewhere';
  const act = (name: Question) =>
    actions[name]().catch(() => store.tell('The browser’s storage did not answer. Everything stays as it is.'));
  return (
    <header class="workbook-bar">
      <h1>Powderbook</h1>
      <p class="workbook-saving" role="status" data-saving={state.saving}>
        {savingWords[state.saving]}
      </p>
      {state.hasBefore && (
        <button type="button" disabled={!ready} onClick={() => ask('bringBack')}>
          Bring back
        </button>
      )}
      <button type="button" disabled={!ready} onClick={() => ask('startAfresh')}>
        Start afresh
      </button>
      <SaveFile store={store} workbook={state.workbook} />
      <OpenFile store={store} ready={ready} onOpen={(file) => actions.openFile(file)} />
      <nav class="workbook-views" aria-label="Shown part">
        {(['sheet', 'functions'] as const).map((view) => (
          <button type="button" key={view} aria-pressed={state.view === view} onClick={() => store.set({ view })}>
            {view === 'sheet' ? 'Sheet' : 'Functions'}
          </button>
        ))}
      </nav>
      {question && asked && (
        <Dialog
          title={asked.title}
          confirm={asked.confirm}
          onConfirm={() => void act(question)}
          onClose={() => ask(undefined)}
        >
          <p>{asked.text}</p>
        </Dialog>
      )}
    </header>
  );
}
