import { CAUTIONS } from '../../../src/cautions.js';
import { Unknown } from '../../formula/unknown.js';
import { CellError } from '../../workbook/formula/cellError.js';
import { Heading } from '../Heading.js';
import { useSetting } from '../setting.js';
import type { Explained } from './explain.js';
import { InputExplained } from './InputExplained.js';
import { shownCell } from './shown.js';

/** What came of the call: one figure with its unit, the size of a larger answer, or why there is none. */
function Outcome({ call: { calculation, result } }: { readonly call: Explained }) {
  const setting = useSetting();
  const { texts, formats } = setting;
  const { output } = calculation;
  if (result instanceof Unknown) return <p class="pb-quiet">{texts.explain.unknown[result.kind](result.what)}</p>;
  const rows = result.length;
  const columns = result[0]?.length ?? 0;
  const errors = result.flat().filter((cell) => cell instanceof CellError);
  const first = errors[0];
  const label = 'label' in output ? output.label : texts.explain.result;
  const unit = output.kind === 'number' ? output.unit : '';
  const sentence = first && (
    <p class="pb-remark pb-is-refused">
      {first.code} <span lang="en">{first.message}</span>
    </p>
  );
  if (rows * columns !== 1) {
    return (
      <>
        <p>
          <span lang="en">{label}</span>: {texts.explain.size(formats.count(rows), formats.count(columns))}
        </p>
        {sentence}
      </>
    );
  }
  return first ? (
    sentence
  ) : (
    <p>
      <span lang="en">{label}</span>: <strong>{shownCell(result[0]?.[0] ?? null, unit, setting)}</strong>
    </p>
  );
}

/** One call: its result, each input, and by which method with which cautions. Calls inside it stand at their input. */
export function CallExplained({ call, level }: { readonly call: Explained; readonly level: 3 | 4 }) {
  const { texts } = useSetting();
  const { id, question, method, sources, cautions = [] } = call.calculation;
  return (
    <section class="pb-call">
      <Heading level={level} class="pb-id">
        {`POWDER.${id}`}
      </Heading>
      <p>{texts.say(question)}</p>
      <Outcome call={call} />
      <ul class="pb-inputs">
        {call.inputs.map((input) => (
          <InputExplained key={input.given.parameter.name} input={input}>
            {input.calls.map((inner, index) => (
              <CallExplained key={index} call={inner} level={4} />
            ))}
          </InputExplained>
        ))}
      </ul>
      <details class="pb-quiet">
        <summary>{texts.explain.method}</summary>
        <p lang="en">{method}</p>
        <ul lang="en">
          {sources.map((source) => (
            <li key={source}>{source}</li>
          ))}
        </ul>
      </details>
      {cautions.map((name) => (
        <p key={name} class="pb-caution" lang="en">
          {CAUTIONS[name]}
        </p>
      ))}
    </section>
  );
}
