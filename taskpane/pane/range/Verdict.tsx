import type { Bounds } from '../../../src/core/input.js';
import { useSetting } from '../setting.js';

interface Props {
  readonly bounds: Bounds;
  readonly value: number;
  readonly refused: boolean;
}

/** Usual, unusual or refused, as a word: colour alone would not tell everyone. */
export function Verdict({ bounds: { usual }, value, refused }: Props) {
  const { texts } = useSetting();
  if (refused) return <span class="pb-verdict pb-is-refused">{texts.card.isRefused}</span>;
  if (!usual) return null;
  return value >= usual[0] && value <= usual[1] ? (
    <span class="pb-verdict pb-is-usual">{texts.card.isUsual}</span>
  ) : (
    <span class="pb-verdict pb-is-unusual">{texts.card.isUnusual}</span>
  );
}
