import { useId } from 'preact/hooks';
import type { NumberInput, OneCellInput } from '../../../src/core/input.js';
import { readNumber } from '../../workbook/entry/number.js';
import type { Writing } from '../../workbook/entry/writing.js';
import { unitBeside } from '../formats.js';
import { RangeBar } from '../range/RangeBar.js';
import { Verdict } from '../range/Verdict.js';
import { useSetting } from '../setting.js';
import { ChoiceField } from './ChoiceField.js';
import { Described, describedBy } from './Described.js';
import type { FieldProps } from './fieldProps.js';

/** The number in a field; undefined where there is none. */
function numberIn(text: string, input: NumberInput, writing: Writing): number | undefined {
  if (text.trim() === '') return input.preset;
  const entry = readNumber(text, writing);
  return entry.kind === 'number' ? entry.value : undefined;
}

export function OneCellField({ name, input, draft, problems, onField }: FieldProps<OneCellInput>) {
  const { texts, formats, writing } = useSetting();
  const id = useId();
  const text = draft[name] ?? '';
  const problem = problems[name];
  if (input.kind === 'choice')
    return <ChoiceField id={id} input={input} text={text} problem={problem} onText={(next) => onField(name, next)} />;
  const bounds = input.kind === 'number' ? input : undefined;
  const value = bounds && numberIn(text, bounds, writing);
  const remark =
    bounds?.preset !== undefined
      ? texts.card.preset(formats.amount(bounds.preset, bounds.unit))
      : bounds?.optional && texts.card.optional;
  return (
    <Described
      id={id}
      label={texts.say(input.label)}
      help={texts.say(input.help)}
      problem={problem}
      {...(remark ? { remark } : {})}
      {...(bounds ? { bounds } : {})}
    >
      <div class="pb-entry">
        <input
          id={id}
          type="text"
          inputMode={bounds ? 'decimal' : undefined}
          autocomplete="off"
          spellcheck={false}
          value={text}
          aria-invalid={problem !== undefined}
          aria-describedby={describedBy(id, problem)}
          onInput={(event) => onField(name, event.currentTarget.value)}
        />
        {bounds && (
          <span class="pb-unit">{bounds.unit === 'as given' ? texts.card.asGiven : unitBeside(bounds.unit)}</span>
        )}
        {bounds && value !== undefined && <Verdict bounds={bounds} value={value} refused={problem !== undefined} />}
      </div>
      {bounds && <RangeBar bounds={bounds} {...(value === undefined ? {} : { value })} />}
    </Described>
  );
}
