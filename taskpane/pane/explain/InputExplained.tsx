import type { ComponentChildren } from 'preact';
import { useContext } from 'preact/hooks';
import type { Matrix } from '../../formula/arithmetic.js';
import type { Given } from '../../formula/given.js';
import type { Judged } from '../../formula/judge.js';
import { textOf } from '../../formula/references.js';
import { Unknown } from '../../formula/unknown.js';
import { cellReference, placeText } from '../../host/address.js';
import type { Reference } from '../../host/reference.js';
import { useSetting } from '../setting.js';
import type { ExplainedInput } from './explain.js';
import { Going } from './going.js';
import { Received } from './Received.js';
import { shownCell } from './shown.js';

/** The most values of one range that are shown one by one. */
const MOST_SHOWN = 60;

/** The cell of a range from which one of its values comes. */
function cellOf({ reference }: Given, { row, column }: Judged): Reference | undefined {
  if (reference?.kind !== 'range') return reference;
  return cellReference(reference.sheet, reference.top + row, reference.left + column);
}

function Origin({ given }: { readonly given: Given }) {
  const { texts } = useSetting();
  const { goTo, sheet } = useContext(Going);
  const { node, reference } = given;
  if (!node) return <span class="pb-quiet">{texts.explain.leftOut}</span>;
  if (!reference) {
    const literal = node.type === 'Literal' || node.type === 'ArrayExpression';
    return <span class="pb-quiet">{literal ? texts.explain.typed : texts.explain.from(textOf(node))}</span>;
  }
  const place = placeText(reference, sheet);
  const label = texts.say(given.parameter.label);
  return (
    <button
      type="button"
      class="pb-link"
      aria-label={texts.explain.goToInput(label, place)}
      onClick={() => goTo(reference)}
    >
      {texts.explain.from(place)}
    </button>
  );
}

/** Several values of one input: how many are usual, then those that are not, then all of them on request. */
function Several({ given, judged, value }: { given: Given; judged: readonly Judged[]; value: Matrix }) {
  const { texts, formats } = useSetting();
  const odd = judged.filter(({ judgement }) => judgement !== 'usual' && judgement !== 'none');
  const line = (one: Judged) => (
    <Received key={`${one.row} ${one.column}`} judged={one} named origin={cellOf(given, one)} />
  );
  return (
    <>
      <p>{texts.explain.values(formats.count(value.flat().length), formats.count(odd.length))}</p>
      {odd.slice(0, MOST_SHOWN).map(line)}
      {judged.length > 0 && (
        <details class="pb-quiet">
          <summary>{texts.explain.each}</summary>
          {judged.slice(0, MOST_SHOWN).map(line)}
          {judged.length > MOST_SHOWN && <p>{texts.explain.more(formats.count(judged.length - MOST_SHOWN))}</p>}
        </details>
      )}
    </>
  );
}

/** One input of a call: what it received, from where, and how that lies in its range. */
export function InputExplained({
  input: { given, judged },
  children,
}: {
  readonly input: ExplainedInput;
  /** The calls inside the input's formula, explained. */
  readonly children: ComponentChildren;
}) {
  const setting = useSetting();
  const { texts, formats } = setting;
  const { parameter, value } = given;
  const { input } = parameter;
  const preset = 'preset' in input ? input.preset : undefined;
  const unit = 'unit' in input ? input.unit : '';
  const [only] = judged;
  return (
    <li class="pb-input">
      <div class="pb-label">
        <span>{texts.say(parameter.label)}</span>
        <Origin given={given} />
      </div>
      {value instanceof Unknown && <p class="pb-quiet">{texts.explain.unknown[value.kind](value.what)}</p>}
      {value === null && preset !== undefined && (
        <p>{texts.card.preset(typeof preset === 'number' ? formats.amount(preset, unit) : preset)}</p>
      )}
      {only && judged.length === 1 && <Received judged={only} />}
      {value !== null && !(value instanceof Unknown) && judged.length !== 1 && (
        <Several given={given} judged={judged} value={value} />
      )}
      {!only && value !== null && !(value instanceof Unknown) && value.flat().length === 1 && (
        <p>{shownCell(value[0]?.[0] ?? null, unit, setting)}</p>
      )}
      {children}
    </li>
  );
}
