import { useLayoutEffect, useRef } from 'preact/hooks';
import { CAUTIONS } from '../../../src/cautions.js';
import type { Calculation } from '../../../src/core/calculation.js';
import type { Host } from '../../host/host.js';
import { InsertForm } from '../form/InsertForm.js';
import { Heading } from '../Heading.js';
import { useSetting } from '../setting.js';

interface Props {
  readonly calculation: Calculation;
  readonly host: Host;
  readonly onBack: () => void;
}

/** All there is to know about one function, and the way to put it into the sheet. */
export function FunctionCard({ calculation, host, onBack }: Props) {
  const { texts } = useSetting();
  const { id, question, summary, method, sources, cautions = [] } = calculation;
  const title = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => title.current?.focus(), []);
  return (
    <article class="pb-card" aria-labelledby="pb-card">
      <button type="button" class="pb-link" onClick={onBack}>
        <span aria-hidden="true">← </span>
        {texts.card.back}
      </button>
      <Heading level={2} id="pb-card" class="pb-id" tabIndex={-1} headingRef={title}>
        {`POWDER.${id}`}
      </Heading>
      <p class="pb-question">{texts.say(question)}</p>
      <p>{texts.say(summary)}</p>
      <InsertForm calculation={calculation} host={host} />
      {cautions.length > 0 && (
        <section class="pb-caution">
          <Heading level={3}>{texts.card.cautions}</Heading>
          {cautions.map((name) => (
            <p key={name} lang="en">
              {CAUTIONS[name]}
            </p>
          ))}
        </section>
      )}
      <section>
        <Heading level={3}>{texts.card.method}</Heading>
        <p lang="en">{method}</p>
        <Heading level={4}>{texts.card.sources}</Heading>
        <ul class="pb-sources" lang="en">
          {sources.map((source) => (
            <li key={source}>{source}</li>
          ))}
        </ul>
      </section>
    </article>
  );
}
