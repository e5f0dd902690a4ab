import type { Bounds } from '../../../src/core/input.js';
import { unitBeside } from '../formats.js';
import { useSetting } from '../setting.js';
import { scaleOf } from './scale.js';

interface Props {
  readonly bounds: Bounds;
  /** What stands in the field, where it is a number within the limits. */
  readonly value?: number;
}

const WIDTH = 1000;
const HEIGHT = 40;

/** Limits, usual range and the present value: drawn, and in words below. */
export function RangeBar({ bounds, value }: Props) {
  const { texts, formats } = useSetting();
  const { limit, usual, unit } = bounds;
  const scale = scaleOf(bounds);
  const x = (one: number) => Math.round(scale.at(one) * WIDTH);
  const beside = unitBeside(unit);
  const withUnit = (text: string) => (beside === '' ? text : `${text}\u00a0${beside}`);
  const number = (one: number) => formats.number(one, unit);
  const words = [
    texts.card.limits(number(limit[0]), withUnit(number(limit[1]))),
    ...(usual ? [texts.card.usual(number(usual[0]), number(usual[1]))] : []),
  ];
  return (
    <div class="pb-range">
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} preserveAspectRatio="none" aria-hidden="true">
        <rect class="pb-range-limits" x="0" y="12" width={WIDTH} height="16" rx="4" />
        {usual && (
          <rect
            class="pb-range-usual"
            x={x(usual[0])}
            y="12"
            width={Math.max(6, x(usual[1]) - x(usual[0]))}
            height="16"
          />
        )}
        {scale.decades.map((decade) => (
          <line key={decade} class="pb-range-decade" x1={x(decade)} x2={x(decade)} y1="28" y2="38" />
        ))}
        {value !== undefined && <line class="pb-range-mark" x1={x(value)} x2={x(value)} y1="2" y2="38" />}
      </svg>
      <p class="pb-quiet">{words.join(', ')}</p>
    </div>
  );
}
