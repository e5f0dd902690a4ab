import { useRef } from 'preact/hooks';
import type { SheetTab, SheetTabs } from '../grid/tabs.js';
import { useWords } from './words.js';

/** Dark enough to be told apart on a light ground and on a dark one. */
const COLOURS = ['#c0392b', '#d68910', '#1e8449', '#2471a3', '#7d3c98', '#707b7c'] as const;

interface Props {
  readonly sheets: SheetTabs;
  readonly tabs: readonly SheetTab[];
  readonly active: SheetTab | undefined;
  readonly readOnly: boolean;
}

/** What is done with a sheet less often: its place, its colour, hiding it and showing it again. */
export function TabMore({ sheets, tabs, active, readOnly }: Props) {
  const { tabs: words, format } = { ...useWords().workbook, format: useWords().format };
  const menu = useRef<HTMLDetailsElement>(null);
  const shown = tabs.filter((tab) => !tab.hidden);
  const hidden = tabs.filter((tab) => tab.hidden);
  const place = shown.findIndex((tab) => tab.active);
  const names = [format.fills.red, format.fills.yellow, format.fills.green, format.fills.blue];
  const close = ({ key }: KeyboardEvent) => {
    if (key !== 'Escape' || !menu.current) return;
    menu.current.open = false;
    menu.current.querySelector('summary')?.focus();
  };
  if (!active) return null;
  const { id } = active;
  return (
    <details class="workbook-more" ref={menu} onKeyDown={close}>
      <summary>{words.more}</summary>
      <div>
        <button type="button" disabled={readOnly || place < 1} onClick={() => sheets.move(id, -1)}>
          {words.left}
        </button>
        <button type="button" disabled={readOnly || place > shown.length - 2} onClick={() => sheets.move(id, 1)}>
          {words.right}
        </button>
        <label>
          {words.colour}
          <select
            value={active.colour ?? ''}
            disabled={readOnly}
            onChange={({ currentTarget }) => sheets.paint(id, currentTarget.value || undefined)}
          >
            <option value="">{format.fills.none}</option>
            {COLOURS.map((colour, index) => (
              <option key={colour} value={colour}>
                {names[index] ?? colour}
              </option>
            ))}
          </select>
        </label>
        <button type="button" disabled={readOnly || shown.length < 2} onClick={() => sheets.hide(id)}>
          {words.hide}
        </button>
        {hidden.length > 0 && (
          <label>
            {words.unhide}
            <select value="" disabled={readOnly} onChange={({ currentTarget }) => sheets.unhide(currentTarget.value)}>
              <option value="">…</option>
              {hidden.map((tab) => (
                <option key={tab.id} value={tab.id}>
                  {tab.name}
                </option>
              ))}
            </select>
          </label>
        )}
      </div>
    </details>
  );
}
