import { placeText } from '../../host/address.js';
import type { RangeReference } from '../../host/reference.js';
import { Heading } from '../Heading.js';
import { useSetting } from '../setting.js';
import { type Checked, type Finding, KINDS } from './finding.js';
import { sayFinding } from './sayFinding.js';

/** More of a kind than this are not drawn: nobody reads them in a narrow pane. */
const MOST_OF_A_KIND = 100;

interface Props {
  readonly checked: Checked;
  readonly sheet: string;
  readonly onGo: (place: RangeReference) => void;
  /** Where the workbook can turn texts into numbers. */
  readonly onTurn: ((place: RangeReference) => void) | undefined;
}

type LineProps = Omit<Props, 'checked'> & { readonly finding: Finding };

function Line({ finding, sheet, onGo, onTurn }: LineProps) {
  const setting = useSetting();
  const { text, english } = sayFinding(finding, setting);
  const place = placeText(finding.place, sheet);
  const { turn, turnThere } = setting.texts.textNumbers;
  return (
    <li>
      <p>
        <button
          type="button"
          class="pb-link"
          aria-label={`${setting.texts.check.goThere(place)}, ${finding.subject}`}
          onClick={() => onGo(finding.place)}
        >
          {place}
        </button>{' '}
        <span class="pb-quiet" lang={finding.kind === 'text' ? undefined : 'en'}>
          {finding.subject}
        </span>
      </p>
      <p lang={english ? 'en' : undefined}>{text}</p>
      {finding.kind === 'text' && onTurn && (
        <button type="button" aria-label={turnThere(place)} onClick={() => onTurn(finding.place)}>
          {turn}
        </button>
      )}
    </li>
  );
}

/** What was found, by kind, each with the way there. */
export function Findings({ checked: { findings }, ...line }: Props) {
  const { texts, formats } = useSetting();
  return (
    <>
      {KINDS.map((kind) => {
        const own = findings.filter((one) => one.kind === kind);
        if (own.length === 0) return null;
        return (
          <section key={kind} class={`pb-findings pb-findings-${kind}`}>
            <Heading level={2}>{`${texts.check.kinds[kind]} (${formats.count(own.length)})`}</Heading>
            <ul>
              {own.slice(0, MOST_OF_A_KIND).map((finding, index) => (
                <Line key={index} finding={finding} {...line} />
              ))}
            </ul>
            {own.length > MOST_OF_A_KIND && (
              <p class="pb-quiet">{texts.check.more(formats.count(own.length - MOST_OF_A_KIND))}</p>
            )}
          </section>
        );
      })}
    </>
  );
}
