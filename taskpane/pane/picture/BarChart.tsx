import { axisTitle } from './axisTitle.js';
import type { BarLayout } from './barLayout.js';
import type { Bars } from './picture.js';
import { SIGN } from './sideBySide.js';
import { TickText } from './TickText.js';

interface Props {
  readonly layout: BarLayout;
  readonly bars: Bars;
}

function Sets({ layout: { line, named }, sets }: { readonly layout: BarLayout; readonly sets: Bars['sets'] }) {
  return (
    <>
      {named.map(({ x, row }, set) => (
        <g key={sets[set]}>
          <rect class={`pb-bar-${set}`} x={x + 1} y={line * (row + 0.2)} width={line} height={line * 0.6} />
          <text x={x + line * SIGN} y={line * (row + 0.75)}>
            {sets[set]}
          </text>
        </g>
      ))}
    </>
  );
}

/** Lines of bars over one axis. */
export function BarChart({ layout, bars: { axis, sets, level } }: Props) {
  const { left, right, top, bottom, line, thick, x, ticks, lines, width, letter } = layout;
  return (
    <>
      <Sets layout={layout} sets={sets} />
      {ticks.map(({ at, text }) => (
        <g key={at}>
          <line class="pb-grid" x1={x(at)} x2={x(at)} y1={top} y2={bottom} />
          <TickText at={x(at)} y={bottom + line} text={text} end={width} letter={letter} />
        </g>
      ))}
      <line class="pb-frame" x1={left} x2={right} y1={bottom} y2={bottom} />
      {level && (
        <>
          <line class="pb-end" x1={x(level.at)} x2={x(level.at)} y1={top} y2={bottom} />
          <text class="pb-said" x={x(level.at)} y={top - line * 0.3} text-anchor="middle">
            {level.text}
          </text>
        </>
      )}
      {lines.map(({ label, note, foot, bars }, index) => (
        <g key={index}>
          <text class="pb-said" x={left} y={foot}>
            {label}
          </text>
          {note && (
            <text class="pb-said" x={right} y={foot} text-anchor="end">
              {note}
            </text>
          )}
          {bars.map((bar) => (
            <rect key={bar.set} class={`pb-bar-${bar.set}`} x={bar.left} y={bar.top} width={bar.width} height={thick} />
          ))}
        </g>
      ))}
      <text class="pb-axis" x={right} y={bottom + line * 2.2} text-anchor="end">
        {axisTitle(axis)}
      </text>
    </>
  );
}
