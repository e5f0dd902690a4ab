import { useState } from 'preact/hooks';
import { CalculationStatus } from './calculation.js';
import { Dialog } from './dialog.js';
import { OpenFile } from './openFile.js';
import type { ReadFile } from './readFile.js';
import { SaveFile } from './saveFile.js';
import type { State, Store } from './state.js';
import { useWords } from './words.js';

export interface Actions {
  startAfresh(): Promise<void>;
  bringBack(): Promise<void>;
  openFile(file: ReadFile): Promise<void>;
  /** Makes this the page that writes, in the place of another one. */
  takeOver(): Promise<void>;
}

type Question = 'startAfresh' | 'bringBack';

export function Bar({ state, store, actions }: { state: State; store: Store; actions: Actions }) {
  const [question, ask] = useState<Question>();
  const { workbook: words } = useWords();
  const asked = question && words[question];
  const ready = state.workbook !== undefined && state.saving !== 'elsewhere';
  const act = (name: Question) => actions[name]().catch(() => store.tell(words.storage));
  return (
    <header class="workbook-bar">
      <h1>Powderbook</h1>
      <p class="workbook-saving" role="status" data-saving={state.saving}>
        {words.saving[state.saving]}
      </p>
      {state.saving === 'elsewhere' && (
        <button type="button" onClick={() => void actions.takeOver()}>
          {words.takeOver}
        </button>
      )}
      <CalculationStatus calculation={state.workbook?.calculation} />
      {state.hasBefore && (
        <button type="button" disabled={!ready} onClick={() => ask('bringBack')}>
          {words.bringBack.button}
        </button>
      )}
      <button type="button" disabled={!ready} onClick={() => ask('startAfresh')}>
        {words.startAfresh.button}
      </button>
      <button type="button" disabled={!state.workbook} onClick={() => window.print()}>
        {words.print}
      </button>
      <SaveFile store={store} workbook={state.workbook} />
      <OpenFile
        store={store}
        ready={ready}
        onOpen={(file) => actions.openFile(file)}
        onInsert={(name, sheet) => state.workbook?.insertText(name, sheet)}
      />
      <nav class="workbook-views" aria-label={words.parts.heading}>
        {(['sheet', 'functions'] as const).map((view) => (
          <button type="button" key={view} aria-pressed={state.view === view} onClick={() => store.set({ view })}>
            {words.parts[view]}
          </button>
        ))}
      </nav>
      {question && asked && (
        <Dialog
          title={asked.title}
          confirm={asked.button}
          onConfirm={() => void act(question)}
          onClose={() => ask(undefined)}
        >
          <p>{asked.text}</p>
        </Dialog>
      )}
    </header>
  );
}
