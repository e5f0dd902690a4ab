import { type Answer, isNoAnswer } from '../../../src/core/evaluate.js';
import type { Output } from '../../../src/core/output.js';
import type { AnswerCell } from '../../../src/core/present.js';
import type { Unit } from '../../../src/core/units.js';
import { labelled } from '../../../src/core/wording.js';
import { useSetting } from '../setting.js';

/** The unit of each cell in a line of the answer, or of each line in a report. */
const unitsOf = (output: Output): readonly Unit[] => {
  if (output.kind === 'number') return [output.unit];
  if (!('fields' in output)) return [];
  return Object.values(output.fields).flatMap((field) => {
    const unit = 'unit' in field ? field.unit : '';
    return 'error' in field && field.error && output.kind === 'report' ? [unit, unit] : [unit];
  });
};

interface Props {
  readonly output: Output;
  readonly answer: Answer;
}

/** An answer as people read it: one figure with its unit, or a table with its labels. */
export function AnswerTable({ output, answer }: Props) {
  const { texts, formats } = useSetting();
  const units = unitsOf(output);
  const shown = (cell: AnswerCell | undefined, unit: Unit = ''): string => {
    if (typeof cell === 'number') return formats.number(cell, unit);
    if (typeof cell === 'object') return `#N/A: ${cell.none}`;
    return cell === undefined ? '' : String(cell);
  };
  if (output.kind === 'number' || output.kind === 'text') {
    const only = answer[0]?.[0];
    const text = typeof only === 'number' && output.kind === 'number' ? formats.amount(only, output.unit) : shown(only);
    return (
      <p class="pb-answer">
        <span lang="en">{output.label}</span> <output class={isNoAnswer(only) ? undefined : 'pb-figure'}>{text}</output>
      </p>
    );
  }
  if (output.kind === 'table') {
    const [header = [], ...rows] = answer;
    return (
      // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard.
      <section class="pb-scroll" tabIndex={0} aria-label={texts.result.table}>
        <table lang="en">
          <thead>
            <tr>
              {header.map((label) => (
                <th key={String(label)} scope="col">
                  {shown(label)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((row, index) => (
              <tr key={index}>
                {row.map((cell, column) => (
                  <td key={column}>{shown(cell, units[column])}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    );
  }
  if (output.kind === 'column') {
    return (
      <ol class="pb-column" lang="en">
        {answer.map((row, index) => (
          <li key={index}>{shown(row[0])}</li>
        ))}
      </ol>
    );
  }
  const lines =
    output.kind === 'report'
      ? answer.map(([label, cell]) => [String(label), cell] as const)
      : Object.values(output.fields).map(
          (field, index) => [labelled(field.label, 'unit' in field ? field.unit : ''), answer[0]?.[index]] as const,
        );
  return (
    <table lang="en">
      <tbody>
        {lines.map(([label, cell], index) => (
          <tr key={label}>
            <th scope="row">{label}</th>
            <td>{shown(cell, units[index])}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
