import { useContext } from 'preact/hooks';
import type { Judged } from '../../formula/judge.js';
import { placeText } from '../../host/address.js';
import type { Reference } from '../../host/reference.js';
import { RangeBar } from '../range/RangeBar.js';
import { RangeSource } from '../range/RangeSource.js';
import { useSetting } from '../setting.js';
import { Going } from './going.js';
import { shownCell } from './shown.js';

interface Props {
  readonly judged: Judged;
  /** Whether its label has to be said: where several values stand together. */
  readonly named?: boolean;
  readonly origin?: Reference | undefined;
}

/** One value with its unit, its verdict as a word, its range with its mark, and the source of that range. */
export function Received({ judged: { input, cell, judgement, sentence }, named, origin }: Props) {
  const setting = useSetting();
  const { texts } = setting;
  const { goTo, sheet } = useContext(Going);
  const bounds = 'limit' in input ? input : undefined;
  const value = typeof cell === 'number' && bounds && judgement !== 'refused' ? { value: cell } : {};
  const place = origin && placeText(origin, sheet);
  return (
    <div class="pb-received">
      <p class="pb-entry">
        {named && <span lang="en">{input.label}</span>}
        <strong>{shownCell(cell, bounds?.unit ?? '', setting)}</strong>
        {judgement !== 'none' && (
          <span class={`pb-verdict pb-is-${judgement === 'error' ? 'refused' : judgement}`}>
            {texts.explain.judgement[judgement]}
          </span>
        )}
        {origin && place && (
          <button
            type="button"
            class="pb-link"
            aria-label={texts.explain.goToInput(texts.say(input.label), place)}
            onClick={() => goTo(origin)}
          >
            {place}
          </button>
        )}
      </p>
      {sentence && judgement !== 'usual' && (
        <p class={`pb-remark pb-is-${judgement === 'unusual' ? 'unusual' : 'refused'}`} lang="en">
          {sentence}
        </p>
      )}
      {bounds && <RangeBar bounds={bounds} {...value} />}
      {bounds && <RangeSource bounds={bounds} />}
    </div>
  );
}
