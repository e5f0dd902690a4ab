import { useMemo, useState } from 'preact/hooks';
import type { Host } from '../host/host.js';
import { languageOf } from '../texts/texts.js';
import { Functions } from './Functions.js';
import { Heading } from './Heading.js';
import { Help } from './Help.js';
import { SelectedCell } from './SelectedCell.js';
import { Sheets } from './Sheets.js';
import { SettingContext, settingFor } from './setting.js';
import { type TabName, Tabs } from './Tabs.js';

/** The whole pane: the selected cell on top, then functions, sheets and help behind tabs. */
export function App({ host, locale }: { readonly host: Host; readonly locale: string }) {
  const setting = useMemo(() => settingFor(locale, host.name), [locale, host.name]);
  const [tab, setTab] = useState<TabName>('functions');
  const [chosen, setChosen] = useState<string>();
  const [query, setQuery] = useState('');
  const [opened, setOpened] = useState<readonly string[]>([]);
  const list = { query, onQuery: setQuery, opened, onOpened: setOpened };
  const explain = (id: string) => {
    setTab('functions');
    setChosen(id);
  };
  // In Excel the pane is the page; beside the grid it is one region of a page.
  const Frame = host.name === 'excel' ? 'main' : 'section';
  return (
    <SettingContext.Provider value={setting}>
      <Frame class="pb-pane" aria-labelledby="pb-title" lang={languageOf(locale)}>
        <Heading level={1} id="pb-title" class="pb-title">
          {setting.texts.pane}
        </Heading>
        <SelectedCell host={host} onExplain={explain} />
        <Tabs
          tab={tab}
          onTab={setTab}
          panels={{
            functions: <Functions host={host} chosen={chosen} onChoose={setChosen} {...list} />,
            sheets: <Sheets host={host} />,
            help: <Help />,
          }}
        />
      </Frame>
    </SettingContext.Provider>
  );
}
