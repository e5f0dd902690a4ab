import { useMemo, useState } from 'preact/hooks';
import type { Host } from '../host/host.js';
import { languageOf, type Texts } from '../texts/texts.js';
import { Functions } from './Functions.js';
import { Heading } from './Heading.js';
import { SelectedCell } from './SelectedCell.js';
import { sentenceFrom } from './sentenceFrom.js';
import { SettingContext, settingFor } from './setting.js';
import { type TabName, Tabs } from './Tabs.js';
import { useOtherTabs } from './useOtherTabs.js';

interface Props {
  readonly host: Host;
  readonly locale: string;
  readonly texts: Texts;
  /** Why something failed that was asked for outside the pane; empty where nothing did. */
  readonly told: string;
}

/** The whole pane: the selected cell on top, then functions, check, sheets and help behind tabs. */
export function App({ host, locale, texts, told }: Props) {
  const setting = useMemo(() => settingFor(texts, locale, host.name), [texts, locale, host.name]);
  const [tab, setTab] = useState<TabName>('functions');
  const { parts, error } = useOtherTabs(tab !== 'functions');
  const failure = error !== undefined && (
    <p class="pb-refusal" role="alert">
      {sentenceFrom(error, texts)}
    </p>
  );
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
      <Frame class="pb-pane" data-searching={query !== ''} aria-labelledby="pb-title" lang={languageOf(locale)}>
        <Heading level={1} id="pb-title" class="pb-title">
          {setting.texts.pane}
        </Heading>
        <div role="alert">{told && <p class="pb-refusal">{told}</p>}</div>
        {/* Beside the grid this part scrolls by itself, so that it never pushes the search out of view. */}
        <section class="pb-above" aria-label={texts.selected.above} tabIndex={host.name === 'excel' ? undefined : 0}>
          <SelectedCell host={host} onExplain={explain} />
        </section>
        <div class="pb-below">
          <Tabs
            tab={tab}
            onTab={setTab}
            panels={{
              functions: <Functions host={host} chosen={chosen} onChoose={setChosen} {...list} />,
              check: parts ? <parts.Check host={host} /> : failure,
              sheets: parts ? (
                <>
                  <parts.Sheets host={host} />
                  <parts.Share host={host} />
                </>
              ) : (
                failure
              ),
              help: parts ? <parts.Help /> : failure,
            }}
          />
        </div>
      </Frame>
    </SettingContext.Provider>
  );
}
