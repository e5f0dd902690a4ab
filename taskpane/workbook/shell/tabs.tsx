import { useEffect, useState } from 'preact/hooks';
import type { SheetTab, SheetTabs } from '../grid/tabs.js';
import { Dialog } from './dialog.js';
import { RenameField } from './rename.js';

/** The workbook's sheets: switch, add, rename, delete. */
export function Tabs({ sheets, tell }: { sheets: SheetTabs; tell(message: string): void }) {
  const [tabs, setTabs] = useState<SheetTab[]>([]);
  const [renaming, rename] = useState<string>();
  const [deleting, ask] = useState<SheetTab>();
  useEffect(() => sheets.watch(setTabs), [sheets]);
  const active = tabs.find((tab) => tab.active);
  const finish = (tab: SheetTab, name: string | undefined) => {
    rename(undefined);
    const refusal = name === undefined || name === tab.name ? undefined : sheets.rename(tab.id, name);
    if (refusal) tell(`Not renamed: ${refusal}`);
  };
  return (
    <nav class="workbook-tabs" aria-label="Sheets">
      <ul>
        {tabs.map((tab) => (
          <li key={tab.id}>
            {renaming === tab.id ? (
              <RenameField name={tab.name} onDone={(name) => finish(tab, name)} />
            ) : (
              <button
                type="button"
                aria-current={tab.active ? 'true' : undefined}
                onClick={() => sheets.show(tab.id)}
                onDblClick={() => rename(tab.id)}
              >
                {tab.name}
              </button>
            )}
          </li>
        ))}
      </ul>
      <button type="button" onClick={() => sheets.add()}>
        Add sheet
      </button>
      <button type="button" disabled={!active} onClick={() => rename(active?.id)}>
        Rename
      </button>
      <button type="button" disabled={tabs.length < 2} onClick={() => ask(active)}>
        Delete
      </button>
      {deleting && (
        <Dialog
          title={`Delete the sheet ${deleting.name}?`}
          confirm="Delete"
          onConfirm={() => sheets.remove(deleting.id)}
          onClose={() => ask(undefined)}
        >
          <p>What stands on it is gone then, and formulas on other sheets that read from it will show an error.</p>
        </Dialog>
      )}
    </nav>
  );
}
