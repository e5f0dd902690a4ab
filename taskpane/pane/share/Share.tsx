import { useState } from 'preact/hooks';
import type { Host } from '../../host/host.js';
import { Heading } from '../Heading.js';
import { sentenceFrom } from '../sentenceFrom.js';
import { useSetting } from '../setting.js';

/** A copy of the sheet for people who lack the add-in. */
export function Share({ host }: { readonly host: Host }) {
  const { texts } = useSetting();
  const [busy, setBusy] = useState(false);
  const [said, setSaid] = useState('');
  const [failed, setFailed] = useState('');
  const copy = async () => {
    if (busy) return;
    setBusy(true);
    setFailed('');
    setSaid(texts.share.busy);
    try {
      const { name } = await host.copyWithValues(texts.share.ending);
      setSaid(texts.share.done(name));
    } catch (error) {
      setSaid('');
      setFailed(sentenceFrom(error, texts));
    }
    setBusy(false);
  };
  return (
    <section class="pb-share">
      <Heading level={2}>{texts.share.heading}</Heading>
      <p>{texts.share.intro}</p>
      <button type="button" onClick={() => void copy()}>
        {texts.share.button}
      </button>
      <p role="status">{said}</p>
      <div role="alert">{failed && <p class="pb-refusal">{failed}</p>}</div>
    </section>
  );
}
