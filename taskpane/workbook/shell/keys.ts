import type { Store } from './state.js';

const FOCUSABLE =
  'a[href], button:not([disabled]), input:not([disabled]), select, textarea, [tabindex]:not([tabindex="-1"])';

/** F6 goes from the sheet to the functions and back; the grid itself keeps the Tab key. */
export function moveWithF6(store: Store, pane: HTMLElement, focusGrid: () => void) {
  document.addEventListener(
    'keydown',
    (event) => {
      if (
        event.key !== 'F6' ||
        event.ctrlKey ||
        event.altKey ||
        event.metaKey ||
        document.querySelector('dialog[open]')
      )
        return;
      event.preventDefault();
      event.stopPropagation();
      const toSheet = pane.contains(document.activeElement);
      store.set({ view: toSheet ? 'sheet' : 'functions' });
      // What was hidden can take the focus only once it is drawn.
      requestAnimationFrame(() => {
        if (toSheet) focusGrid();
        else pane.querySelector<HTMLElement>(FOCUSABLE)?.focus();
      });
    },
    { capture: true },
  );
}
