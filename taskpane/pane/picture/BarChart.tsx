import { axisTitle } from './axisTitle.js';
import type { BarLayout } from './barLayout.js';
import type { Bars } from './picture.js';
import { TickText } from './TickText.js';

interface Props {
  readonly layout: BarLayout;
  readonly bars: Bars;
}

function Sets({ layout: { line, thick, stacked }, sets }: { readonly layout: BarLayout; readonly sets: Bars['sets'] }) {
  const besides = line * 2.5 + sets[0].length * line * 0.45;
  return (
    <>
      {sets.map((name, set) => {
        if (name === '') return null;
        const [x, y] = set === 1 && !stacked ? [besides, 0] : [0, set * line];
        return (
          <g key={name}>
            <rect class={`pb-bar-${set}`} x={x + 1} y={y + (line - thick) / 2} width={line} height={thick} />
            <text x={x + line * 1.4} y={y + line * 0.75}>
              {name}
            </text>
          </g>
        );
      })}
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
      {lines.map(({ label, note, foot, bars }) => (
        <g key={label}>
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
