import { useState } from 'preact/hooks';
import { emptied } from '../../src/sheets/emptied.js';
import { starterSheets } from '../../src/sheets/index.js';
import type { StarterSheet } from '../../src/sheets/sheet.js';
import type { Host } from '../host/host.js';
import { Heading } from './Heading.js';
import { sentenceFrom } from './sentenceFrom.js';
import { useSetting } from './setting.js';

type State = { readonly key?: string; readonly said: string; readonly failed: string };

/** The starter sheets, each to be inserted as a tab of its own. */
export function Sheets({ host }: { readonly host: Host }) {
  const { texts } = useSetting();
  const [state, setState] = useState<State>({ said: '', failed: '' });
  const insert = async (sheet: StarterSheet) => {
    if (state.key) return;
    setState({ key: sheet.key, said: texts.sheets.busy, failed: '' });
    try {
      await host.insertSheet(sheet);
      setState({ said: texts.sheets.done(sheet.name), failed: '' });
    } catch (error) {
      setState({ said: '', failed: sentenceFrom(error, texts) });
    }
  };
  return (
    <>
      <p>{texts.sheets.intro}</p>
      <p role="status">{state.said}</p>
      <div role="alert">{state.failed && <p class="pb-refusal">{state.failed}</p>}</div>
      <ul class="pb-sheets">
        {starterSheets.map((sheet) => (
          <li key={sheet.key}>
            <Heading level={2} lang="en">
              {sheet.name}
            </Heading>
            <p lang="en">{sheet.summary}</p>
            <button type="button" aria-label={texts.sheets.insertNamed(sheet.name)} onClick={() => void insert(sheet)}>
              {texts.sheets.insert}
            </button>{' '}
            <button
              type="button"
              aria-label={texts.sheets.insertEmptyNamed(sheet.name)}
              onClick={() => void insert(emptied(sheet))}
            >
              {texts.sheets.insertEmpty}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}
