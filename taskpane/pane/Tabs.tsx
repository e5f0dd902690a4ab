import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import { useSetting } from './setting.js';

const NAMES = ['functions', 'check', 'sheets', 'help'] as const;
export type TabName = (typeof NAMES)[number];

interface Props {
  readonly tab: TabName;
  readonly onTab: (tab: TabName) => void;
  readonly panels: Readonly<Record<TabName, ComponentChildren>>;
}

/** Where each key leads from a tab; the list is a ring. */
const STEPS: Readonly<Record<string, (index: number) => number>> = {
  ArrowRight: (index) => (index + 1) % NAMES.length,
  ArrowLeft: (index) => (index + NAMES.length - 1) % NAMES.length,
  Home: () => 0,
  End: () => NAMES.length - 1,
};

export function Tabs({ tab, onTab, panels }: Props) {
  const { texts } = useSetting();
  const buttons = useRef<Partial<Record<TabName, HTMLButtonElement | null>>>({});
  const onKeyDown = (event: KeyboardEvent) => {
    const to = NAMES[STEPS[event.key]?.(NAMES.indexOf(tab)) ?? -1];
    if (!to) return;
    event.preventDefault();
    onTab(to);
    buttons.current[to]?.focus();
  };
  return (
    <>
      <div class="pb-tabs" role="tablist" aria-label={texts.sections} onKeyDown={onKeyDown}>
        {NAMES.map((name) => (
          <button
            key={name}
            ref={(button) => {
              buttons.current[name] = button;
            }}
            type="button"
            role="tab"
            id={`pb-tab-${name}`}
            aria-controls={`pb-panel-${name}`}
            aria-selected={name === tab}
            tabIndex={name === tab ? 0 : -1}
            onClick={() => onTab(name)}
          >
            {texts.tabs[name]}
          </button>
        ))}
      </div>
      {NAMES.map((name) => (
        // Hidden, not taken away: what was typed into a form is there again after a look at the help.
        <div
          key={name}
          role="tabpanel"
          id={`pb-panel-${name}`}
          aria-labelledby={`pb-tab-${name}`}
          hidden={name !== tab}
        >
          {panels[name]}
        </div>
      ))}
    </>
  );
}
