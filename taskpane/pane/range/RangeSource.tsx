import type { Bounds } from '../../../src/core/input.js';
import { useSetting } from '../setting.js';

/** Who says where the range of an input begins and ends; told on request. */
export function RangeSource({ bounds }: { readonly bounds: Bounds }) {
  const { texts } = useSetting();
  return (
    <details class="pb-quiet">
      <summary>{texts.card.range}</summary>
      <p lang="en">{bounds.source}</p>
    </details>
  );
}
