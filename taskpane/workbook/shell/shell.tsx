import { useEffect, useRef, useState } from 'preact/hooks';
import type { Texts } from '../../texts/texts.js';
import { type Actions, Bar } from './bar.js';
import { Charts } from './charts.js';
import { FormatBar } from './formatBar.js';
import { Notes } from './notes.js';
import { Splitter } from './splitter.js';
import type { State, Store } from './state.js';
import { StatusBar } from './statusBar.js';
import { Tabs } from './tabs.js';
import { useWords, Words } from './words.js';

interface Props {
  readonly store: Store;
  readonly actions: Actions;
  readonly texts: Texts;
  /** Called once, with the elements that the grid and the pane are drawn into. */
  onPlaces(grid: HTMLElement, pane: HTMLElement): void;
}

function Notices({ state, store }: { state: State; store: Store }) {
  const { close } = useWords().workbook;
  return (
    <div class="workbook-notice" role="alert">
      {state.notice && (
        <>
          <p key={state.notice.number}>{state.notice.text}</p>
          <button type="button" onClick={() => store.dismiss()}>
            {close}
          </button>
        </>
      )}
    </div>
  );
}

export function Shell({ store, actions, texts, onPlaces }: Props) {
  const [state, setState] = useState(store.state);
  const words = texts.workbook;
  const grid = useRef<HTMLDivElement>(null);
  const pane = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const stop = store.listen(setState);
    if (grid.current && pane.current) onPlaces(grid.current, pane.current);
    return stop;
  }, []);
  return (
    <Words.Provider value={texts}>
      <div class="workbook" data-view={state.view}>
        <Bar state={state} store={store} actions={actions} />
        <main class="workbook-parts">
          <section class="workbook-sheet" aria-label={words.parts.sheet}>
            <FormatBar workbook={state.workbook} ready={state.saving !== 'elsewhere'} store={store} />
            <Notices state={state} store={store} />
            <div class="workbook-cells">
              <div class="workbook-grid" ref={grid}>
                {!state.workbook && <p class="workbook-loading">{state.failed ?? words.loading}</p>}
              </div>
              {state.workbook && <Charts workbook={state.workbook} fixed={state.saving === 'elsewhere'} />}
            </div>
            {state.workbook && (
              <Tabs
                sheets={state.workbook.tabs}
                readOnly={state.saving === 'elsewhere'}
                tell={(message) => store.tell(message)}
              />
            )}
            {state.workbook && <Notes workbook={state.workbook} />}
            <StatusBar workbook={state.workbook} language={navigator.language} />
          </section>
          <section class="workbook-side" aria-label={words.parts.functions}>
            <Splitter />
            <div class="workbook-pane" ref={pane} />
          </section>
        </main>
      </div>
    </Words.Provider>
  );
}
