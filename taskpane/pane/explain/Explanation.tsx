import { useEffect, useState } from 'preact/hooks';
import type { Host, Selection } from '../../host/host.js';
import type { Reference } from '../../host/reference.js';
import { Heading } from '../Heading.js';
import { sentenceFrom } from '../sentenceFrom.js';
import { useSetting } from '../setting.js';
import { CallExplained } from './CallExplained.js';
import { type Explained, explain } from './explain.js';
import { Going } from './going.js';

interface Props {
  readonly host: Host;
  readonly selection: Selection;
  readonly open: boolean;
  readonly onOpen: (open: boolean) => void;
}

/** How the selected cell comes about: every function of ours in its formula with what it receives. */
export function Explanation({ host, selection, open, onOpen }: Props) {
  const { texts } = useSetting();
  const [calls, setCalls] = useState<readonly Explained[]>([]);
  const [failed, setFailed] = useState('');
  useEffect(() => {
    let wanted = true;
    explain(selection, host).then(
      (explained) => {
        if (!wanted) return;
        setCalls(explained);
        setFailed('');
      },
      (error: unknown) => wanted && setFailed(sentenceFrom(error, texts)),
    );
    return () => {
      wanted = false;
    };
  }, [selection, host, texts]);
  const goTo = (reference: Reference) => {
    setFailed('');
    host.goTo(reference).catch((error: unknown) => setFailed(sentenceFrom(error, texts)));
  };
  return (
    <>
      <div role="alert">{failed && <p class="pb-refusal">{failed}</p>}</div>
      {calls.length > 0 && (
        <details class="pb-explained" open={open} onToggle={(event) => onOpen(event.currentTarget.open)}>
          <summary>
            <Heading level={2}>{texts.explain.heading}</Heading>
          </summary>
          <Going.Provider value={{ goTo, sheet: selection.sheet }}>
            {calls.map((call, index) => (
              <CallExplained key={index} call={call} level={3} />
            ))}
          </Going.Provider>
        </details>
      )}
    </>
  );
}
