import { useEffect, useRef, useState } from 'preact/hooks';
import { type Actions, Bar } from './bar.js';
import { Splitter } from './splitter.js';
import type { State, Store } from './state.js';
import { Tabs } from './tabs.js';

interface Props {
  readonly store: Store;
  readonly actions: Actions;
  /** Called once, with the elements that the grid and the pane are drawn into. */
  onPlaces(grid: HTMLElement, pane: HTMLElement): void;
}

function Notices({ state, store }: { state: State; store: Store }) {
  return (
    <div class="workbook-notice" role="alert">
      {state.notice && (
        <>
          <p key={state.notice.number}>{state.notice.text}</p>
          <button type="button" onClick={() => store.dismiss()}>
            Close
          </button>
        </>
      )}
    </div>
  );
}

export function Shell({ store, actions, onPlaces }: Props) {
  const [state, setState] = useState(store.state);
  const grid = useRef<HTMLDivElement>(null);
  const pane = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const stop = store.listen(setState);
    if (grid.current && pane.current) onPlaces(grid.current, pane.current);
    return stop;
  }, []);
  return (
    <div class="workbook" data-view={state.view}>
      <Bar state={state} store={store} actions={actions} />
      <main class="workbook-parts">
        <section class="workbook-sheet" aria-label="Sheet">
          <Notices state={state} store={store} />
          <div class="workbook-grid" ref={grid}>
            {!state.workbook && (
              <p class="workbook-loading">
                {state.failed ?? 'The grid is loading. The functions can be read meanwhile.'}
              </p>
            )}
          </div>
          {state.workbook && <Tabs sheets={state.workbook.tabs} tell={(message) => store.tell(message)} />}
          <p class="workbook-keys">
            <kbd>F6</kbd> moves between sheet and functions
          </p>
        </section>
        <section class="workbook-side" aria-label="Functions">
          <Splitter />
          <div class="workbook-pane" ref={pane} />
        </section>
      </main>
    </div>
  );
}
