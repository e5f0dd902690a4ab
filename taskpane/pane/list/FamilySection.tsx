import type { Family } from '../../../src/core/calculation.js';
import { Heading } from '../Heading.js';
import { useSetting } from '../setting.js';

interface Props {
  readonly family: Family;
  /** Without what the family is about, where its functions were searched for. */
  readonly found: boolean;
  readonly open: boolean;
  readonly onOpen: (open: boolean) => void;
  readonly onChoose: (id: string) => void;
}

/** One family: its name and what it is about; opened, the question that each of its functions answers. */
export function FamilySection({ family: { name, summary, calculations }, found, open, onOpen, onChoose }: Props) {
  const { texts, formats } = useSetting();
  return (
    <details class="pb-family" open={open} onToggle={(event) => onOpen(event.currentTarget.open)}>
      <summary>
        <Heading level={2}>{texts.say(name)}</Heading>
        <span class="pb-quiet"> {formats.count(calculations.length)}</span>
        {!found && <p class="pb-quiet">{texts.say(summary)}</p>}
      </summary>
      <ul>
        {calculations.map(({ id, question }) => (
          <li key={id}>
            <button type="button" class="pb-choose" id={`pb-choose-${id}`} onClick={() => onChoose(id)}>
              <span class="pb-id">{id}</span>
              <span>{texts.say(question)}</span>
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}
