import type { ChoiceInput } from '../../../src/core/input.js';
import { useSetting } from '../setting.js';
import { Described, describedBy } from './Described.js';

interface Props {
  readonly id: string;
  readonly input: ChoiceInput;
  readonly text: string;
  readonly problem: string | undefined;
  readonly onText: (text: string) => void;
}

/** A choice of words. Words that do not fit stand in the list too, so that choosing one tells why. */
export function ChoiceField({ id, input, text, problem, onText }: Props) {
  const { texts } = useSetting();
  const unfit = Object.entries(input.unfit ?? {});
  const remark = input.preset === undefined ? {} : { remark: texts.card.preset(input.preset) };
  return (
    <Described id={id} label={texts.say(input.label)} help={texts.say(input.help)} problem={problem} {...remark}>
      <div class="pb-entry">
        <select
          id={id}
          value={text}
          aria-invalid={problem !== undefined}
          aria-describedby={describedBy(id, problem)}
          onChange={(event) => onText(event.currentTarget.value)}
        >
          {input.of.map((word) => (
            <option key={word}>{word}</option>
          ))}
          {unfit.map(([word]) => (
            <option key={word} value={word}>
              {texts.card.unfitOption(word)}
            </option>
          ))}
        </select>
      </div>
      <p class="pb-quiet">
        {texts.card.words}: <span lang="en">{input.of.join(', ')}</span>
      </p>
      {unfit.map(([word, reason]) => (
        <p key={word} class="pb-quiet">
          {texts.card.unfit(word, texts.say(reason))}
        </p>
      ))}
    </Described>
  );
}
