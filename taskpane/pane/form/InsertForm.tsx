import { useMemo, useRef, useState } from 'preact/hooks';
import type { Calculation } from '../../../src/core/calculation.js';
import { evaluateCells, isNoAnswer } from '../../../src/core/evaluate.js';
import { isRefused } from '../../../src/core/read.js';
import type { Host } from '../../host/host.js';
import { Result } from '../card/Result.js';
import { Heading } from '../Heading.js';
import { useSetting } from '../setting.js';
import { layOut } from './block.js';
import { exampleDraft } from './draft.js';
import { InputField } from './InputField.js';
import { Insertion } from './Insertion.js';
import { readDraft } from './readDraft.js';

interface Props {
  readonly calculation: Calculation;
  readonly host: Host;
}

/** The worked example as a form: its values can be changed, are checked as in a cell, and go into the sheet. */
export function InsertForm({ calculation, host }: Props) {
  const { texts, formats, writing } = useSetting();
  const example = useMemo(() => exampleDraft(calculation, formats), [calculation, formats]);
  const [draft, setDraft] = useState(example);
  const form = useRef<HTMLFormElement>(null);
  const changed = Object.keys(example).some((field) => draft[field] !== example[field]);
  const { handed, problems } = useMemo(() => readDraft(calculation, draft, writing), [calculation, draft, writing]);
  const fine = Object.keys(problems).length === 0;
  const answer = useMemo(() => (fine ? evaluateCells(calculation, handed) : undefined), [calculation, handed, fine]);
  const laidOut = useMemo(() => layOut(calculation, handed), [calculation, handed]);
  const ready = answer !== undefined && (isNoAnswer(answer) || !isRefused(answer));

  const showProblem = () => form.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
  return (
    <form ref={form} class="pb-form" noValidate onSubmit={(event) => event.preventDefault()}>
      <Heading level={3}>{texts.card.inputs}</Heading>
      {Object.entries(calculation.inputs).map(([key, input]) => (
        <InputField
          key={key}
          name={key}
          input={input}
          draft={draft}
          problems={problems}
          onField={(field, text) => setDraft((before) => ({ ...before, [field]: text }))}
        />
      ))}
      <Result
        calculation={calculation}
        handed={handed}
        laidOut={laidOut}
        answer={answer}
        changed={changed}
        onReset={() => setDraft(example)}
      />
      <Insertion host={host} laidOut={laidOut} ready={ready} onNotReady={showProblem} />
    </form>
  );
}
