import { useId } from 'preact/hooks';
import type { NamesInput, SeriesInput } from '../../../src/core/input.js';
import { labelled } from '../../../src/core/wording.js';
import { RangeBar } from '../range/RangeBar.js';
import { useSetting } from '../setting.js';
import { Described, describedBy } from './Described.js';
import type { FieldProps } from './fieldProps.js';

const MOST_LINES = 8;

/** A whole column as one input: one value on each line. */
export function SeriesField({ name, input, draft, problems, onField }: FieldProps<SeriesInput | NamesInput>) {
  const { texts } = useSetting();
  const id = useId();
  const text = draft[name] ?? '';
  const problem = problems[name];
  const bounds = input.kind === 'series' ? input : undefined;
  const label = bounds ? labelled(texts.say(input.label), bounds.unit) : texts.say(input.label);
  const remark = bounds?.optional ? { remark: texts.card.optional } : {};
  return (
    <Described
      id={id}
      label={label}
      help={texts.say(input.help)}
      problem={problem}
      {...remark}
      {...(bounds ? { bounds } : {})}
    >
      <p class="pb-quiet">{texts.card.oneALine}</p>
      <textarea
        id={id}
        rows={Math.min(MOST_LINES, text.split('\n').length + 1)}
        inputMode={bounds ? 'decimal' : undefined}
        autocomplete="off"
        spellcheck={false}
        value={text}
        aria-invalid={problem !== undefined}
        aria-describedby={describedBy(id, problem)}
        onInput={(event) => onField(name, event.currentTarget.value)}
      />
      {bounds && <RangeBar bounds={bounds} />}
    </Described>
  );
}
