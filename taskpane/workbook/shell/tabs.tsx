import { useEffect, useRef, useState } from 'preact/hooks';
import type { SheetTab, SheetTabs } from '../grid/tabs.js';
import { Dialog } from './dialog.js';
import { RenameField } from './rename.js';
import { TabMore } from './tabMore.js';
import { useWords } from './words.js';

interface Props {
  readonly sheets: SheetTabs;
  /** Another page has the workbook: sheets can be shown, not changed. */
  readonly readOnly: boolean;
  tell(message: string): () => void;
}

/** The workbook's sheets: switch, add, rename, delete. */
export function Tabs({ sheets, readOnly, tell }: Props) {
  const [tabs, setTabs] = useState<SheetTab[]>([]);
  const [renaming, rename] = useState<string>();
  const refused = useRef(() => {});
  const [deleting, ask] = useState<SheetTab>();
  useEffect(() => sheets.watch(setTabs), [sheets]);
  const words = useWords().workbook.tabs;
  const active = tabs.find((tab) => tab.active);
  const shown = tabs.filter((tab) => !tab.hidden);
  const finish = (tab: SheetTab, name: string | undefined) => {
    rename(undefined);
    const refusal = name === undefined || name === tab.name ? undefined : sheets.rename(tab.id, name);
    refused.current();
    if (refusal) refused.current = tell(words.notRenamed(refusal(words)));
  };
  return (
    <nav class="workbook-tabs" aria-label={words.heading}>
      <ul>
        {shown.map((tab) => (
          <li key={tab.id}>
            {renaming === tab.id ? (
              <RenameField name={tab.name} onDone={(name) => finish(tab, name)} />
            ) : (
              <button
                type="button"
                aria-current={tab.active ? 'true' : undefined}
                style={tab.colour ? { boxShadow: `inset 0 -3px ${tab.colour}` } : undefined}
                onClick={() => sheets.show(tab.id)}
                onDblClick={() => !readOnly && rename(tab.id)}
              >
                {tab.name}
              </button>
            )}
          </li>
        ))}
      </ul>
      <button type="button" disabled={readOnly} onClick={() => sheets.add(words.newName)}>
        {words.add}
      </button>
      <button type="button" disabled={readOnly || !active} onClick={() => rename(active?.id)}>
        {words.rename}
      </button>
      <button type="button" disabled={readOnly || shown.length < 2} onClick={() => ask(active)}>
        {words.delete}
      </button>
      <TabMore sheets={sheets} tabs={tabs} active={active} readOnly={readOnly} />
      {deleting && (
        <Dialog
          title={words.deleteTitle(deleting.name)}
          confirm={words.delete}
          onConfirm={() => sheets.remove(deleting.id)}
          onClose={() => ask(undefined)}
        >
          <p>{words.deleteText}</p>
        </Dialog>
      )}
    </nav>
  );
}
