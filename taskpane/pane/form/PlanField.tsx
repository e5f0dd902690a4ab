import { useId } from 'preact/hooks';
import type { PlanInput } from '../../../src/core/input.js';
import { labelled } from '../../../src/core/wording.js';
import { RangeBar } from '../range/RangeBar.js';
import { useSetting } from '../setting.js';
import { planField, planLabels } from './draft.js';
import type { FieldProps } from './fieldProps.js';

/** A plan: each label that the calculation reads, with a field for each column of values. */
export function PlanField({ name, input, draft, problems, onField }: FieldProps<PlanInput>) {
  const { texts, formats } = useSetting();
  const id = useId();
  const columns = Object.entries(input.columns);
  return (
    <fieldset class="pb-plan">
      <legend>{texts.say(input.label)}</legend>
      <p class="pb-help">{texts.say(input.help)}</p>
      {planLabels(input).map(([key, label]) => (
        <fieldset key={key} class="pb-field" aria-labelledby={`${id}-${key}`}>
          <div class="pb-label">
            <span id={`${id}-${key}`} lang="en">
              {labelled(label.label, label.unit)}
            </span>
            <span class="pb-quiet">
              {label.preset !== undefined
                ? texts.card.preset(formats.amount(label.preset, label.unit))
                : label.optional && texts.card.optional}
            </span>
          </div>
          <div class="pb-entries">
            {columns.map(([column, said]) => {
              const field = planField(name, column, key);
              return (
                <label key={column}>
                  <span class="pb-quiet">{texts.say(said.label)}</span>
                  <input
                    type="text"
                    inputMode="decimal"
                    autocomplete="off"
                    value={draft[field] ?? ''}
                    aria-invalid={problems[field] !== undefined}
                    aria-describedby={`${id}-${key}-help`}
                    onInput={(event) => onField(field, event.currentTarget.value)}
                  />
                </label>
              );
            })}
          </div>
          <div aria-live="polite">
            {columns.map(([column]) => {
              const problem = problems[planField(name, column, key)];
              return (
                problem && (
                  <p key={column} class="pb-refusal" lang="en">
                    {problem}
                  </p>
                )
              );
            })}
          </div>
          <RangeBar bounds={label} />
          <p class="pb-help" id={`${id}-${key}-help`} lang="en">
            {label.help}
          </p>
          <details class="pb-quiet">
            <summary>{texts.card.range}</summary>
            <p lang="en">{label.source}</p>
          </details>
        </fieldset>
      ))}
    </fieldset>
  );
}
