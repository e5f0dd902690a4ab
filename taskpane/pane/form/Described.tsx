import type { ComponentChildren } from 'preact';
import type { Bounds } from '../../../src/core/input.js';
import { RangeSource } from '../range/RangeSource.js';

interface Props {
  /** The id of the field that this describes. */
  readonly id: string;
  readonly label: string;
  /** Preset, or that it may be left blank. */
  readonly remark?: string;
  readonly help: string;
  readonly problem: string | undefined;
  readonly bounds?: Bounds;
  /** The field and what is drawn beneath it. */
  readonly children: ComponentChildren;
}

/** What describes a field, for aria-describedby. */
export const describedBy = (id: string, problem: string | undefined): string =>
  problem ? `${id}-problem ${id}-help` : `${id}-help`;

/** A field between its label above and its explanation, refusal and source below. */
export function Described({ id, label, remark, help, problem, bounds, children }: Props) {
  return (
    <div class="pb-field">
      <div class="pb-label">
        <label for={id}>{label}</label>
        {remark && <span class="pb-quiet">{remark}</span>}
      </div>
      {children}
      <div aria-live="polite">
        {problem && (
          <p class="pb-refusal" id={`${id}-problem`} lang="en">
            {problem}
          </p>
        )}
      </div>
      <p class="pb-help" id={`${id}-help`}>
        {help}
      </p>
      {bounds && <RangeSource bounds={bounds} />}
    </div>
  );
}
