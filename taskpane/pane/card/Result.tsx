import type { Calculation } from '../../../src/core/calculation.js';
import { type Answer, type Handed, isNoAnswer } from '../../../src/core/evaluate.js';
import type { NoAnswer, Refused } from '../../../src/core/output.js';
import { isRefused } from '../../../src/core/read.js';
import { FormulaCode } from '../FormulaCode.js';
import type { LaidOut } from '../form/block.js';
import { Heading } from '../Heading.js';
import { useSetting } from '../setting.js';
import { AnswerTable } from './AnswerTable.js';
import { fitsOnALine, formulaText } from './formulaText.js';

interface Props {
  readonly calculation: Calculation;
  readonly handed: Readonly<Record<string, Handed>>;
  readonly laidOut: LaidOut;
  readonly answer: Answer | NoAnswer | Refused | undefined;
  readonly changed: boolean;
  readonly onReset: () => void;
}

/** The formula as a person would type it, and what the library answers. */
export function Result({ calculation, handed, laidOut, answer, changed, onReset }: Props) {
  const { texts, formats } = useSetting();
  return (
    <section class="pb-result">
      <Heading level={3}>{changed ? texts.result.yours : texts.result.example}</Heading>
      {answer && <FormulaCode text={formulaText(calculation, handed, laidOut, formats.notation)} />}
      {answer && !fitsOnALine(handed) && <p class="pb-quiet">{texts.result.laidOut}</p>}
      <div aria-live="polite">
        <Answered calculation={calculation} answer={answer} />
      </div>
      {changed && (
        <button type="button" class="pb-link" onClick={onReset}>
          {texts.result.backToExample}
        </button>
      )}
    </section>
  );
}

function Answered({ calculation, answer }: Pick<Props, 'calculation' | 'answer'>) {
  const { texts } = useSetting();
  if (answer === undefined) return <p class="pb-quiet">{texts.result.incomplete}</p>;
  if (isNoAnswer(answer)) return <Sentence title={texts.result.noAnswer} sentence={answer.none} />;
  if (isRefused(answer)) return <Sentence title={texts.result.refused} sentence={answer.refused} />;
  return <AnswerTable output={calculation.output} answer={answer} />;
}

function Sentence({ title, sentence }: { readonly title: string; readonly sentence: string }) {
  return (
    <p class="pb-refusal">
      <strong>{title}. </strong>
      <span lang="en">{sentence}</span>
    </p>
  );
}
