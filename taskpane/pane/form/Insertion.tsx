import { useState } from 'preact/hooks';
import type { Host } from '../../host/host.js';
import { NotEmpty } from '../../host/refusal.js';
import { sentenceFrom } from '../sentenceFrom.js';
import { useSetting } from '../setting.js';
import type { LaidOut } from './block.js';

interface Props {
  readonly host: Host;
  readonly laidOut: LaidOut;
  readonly ready: boolean;
  readonly onNotReady: () => void;
}

type State =
  | { readonly kind: 'quiet' | 'busy' | 'not ready' }
  | { readonly kind: 'done'; readonly address: string }
  | { readonly kind: 'failed'; readonly sentence: string; readonly notEmpty: boolean };

/** The button that writes the block, and what came of it. */
export function Insertion({ host, laidOut, ready, onNotReady }: Props) {
  const { texts, formats } = useSetting();
  const [state, setState] = useState<State>({ kind: 'quiet' });
  const write = async (overwrite: boolean) => {
    if (state.kind === 'busy') return;
    if (!ready) {
      setState({ kind: 'not ready' });
      onNotReady();
      return;
    }
    setState({ kind: 'busy' });
    try {
      const { address } = await host.write(laidOut.block, { overwrite });
      setState({ kind: 'done', address });
    } catch (error) {
      setState({ kind: 'failed', sentence: sentenceFrom(error, texts), notEmpty: error instanceof NotEmpty });
    }
  };
  const { rows, columns, beside } = laidOut;
  const spill = beside ? texts.insert.beside : texts.insert.below;
  return (
    <section class="pb-insertion">
      <button type="submit" class="pb-primary" onClick={() => void write(false)}>
        {texts.insert.button}
      </button>
      <p class="pb-quiet">
        {texts.insert.where} {rows * columns > 1 && spill(formats.count(rows), formats.count(columns))}
      </p>
      <p role="status">
        {state.kind === 'busy' && texts.insert.busy}
        {state.kind === 'done' && texts.insert.done(state.address)}
      </p>
      <div role="alert">
        {state.kind === 'not ready' && <p class="pb-refusal">{texts.insert.correct}</p>}
        {state.kind === 'failed' && <p class="pb-refusal">{state.sentence}</p>}
      </div>
      {state.kind === 'failed' && state.notEmpty && (
        <p>
          <button type="button" onClick={() => void write(true)}>
            {texts.insert.anyway}
          </button>{' '}
          <span class="pb-quiet">{texts.insert.anywayHint}</span>
        </p>
      )}
    </section>
  );
}
