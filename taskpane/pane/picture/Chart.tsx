import type { Texts } from '../../texts/texts.js';
import { axisTitle } from './axisTitle.js';
import { dotsAt } from './dots.js';
import type { Layout, PlacedPanel } from './layout.js';
import { Marks } from './Marks.js';
import type { Axis } from './picture.js';
import { SIGN } from './sideBySide.js';
import { TickText } from './TickText.js';

interface Props {
  readonly layout: Layout;
  readonly x: Axis;
  readonly words: Texts['picture'];
}

function Grid({ layout, placed }: { readonly layout: Layout; readonly placed: PlacedPanel }) {
  const { left, right, x, xTicks, line } = layout;
  const { top, bottom, y, ticks } = placed;
  return (
    <>
      {ticks.map(({ at, text }) => (
        <g key={at}>
          <line class="pb-grid" x1={left} x2={right} y1={y(at)} y2={y(at)} />
          <text x={left - 6} y={y(at) + line * 0.25} text-anchor="end">
            {text}
          </text>
        </g>
      ))}
      {xTicks.map(({ at }) => (
        <line key={at} class="pb-grid" x1={x(at)} x2={x(at)} y1={top} y2={bottom} />
      ))}
      <path class="pb-frame" d={`M${left},${top}V${bottom}H${right}`} />
    </>
  );
}

function Legend({ line, words }: { readonly line: number; readonly words: Texts['picture'] }) {
  const middle = line * 0.5;
  const second = line * (2 + words.measured.length * 0.5);
  return (
    <g>
      <path class="pb-dots" d={`M${line * 0.4},${middle}h0`} />
      <text x={line} y={line * 0.75}>
        {words.measured}
      </text>
      <path class="pb-curve" d={`M${second},${middle}h${line * 1.2}`} />
      <text x={second + line * 1.6} y={line * 0.75}>
        {words.fitted}
      </text>
    </g>
  );
}

function Names({ line, named }: Pick<Layout, 'line' | 'named'>) {
  return (
    <>
      {named.map(({ text, kind, set, x, row }) => {
        const middle = line * (row + 0.5);
        return (
          <g key={text}>
            <path
              class={`pb-${kind} pb-${kind}-${set}`}
              d={
                kind === 'dots' ? dotsAt([[x + line * 0.8, middle]], set) : `M${x + line * 0.2},${middle}h${line * 1.2}`
              }
            />
            <text x={x + line * SIGN} y={line * (row + 0.75)}>
              {text}
            </text>
          </g>
        );
      })}
    </>
  );
}

/** Panels over one x axis. Titles of declared axes are English in every language. */
export function Chart({ layout, x: xAxis, words }: Props) {
  const { panels, x, xTicks, line, right, legend, named, width, letter } = layout;
  const foot = panels.at(-1)?.bottom ?? 0;
  return (
    <>
      <Names line={line} named={named} />
      {legend && <Legend line={line} words={words} />}
      {panels.map((placed) => (
        <g key={placed.top}>
          <text class="pb-axis" x="0" y={placed.top - line * 0.5}>
            {axisTitle(placed.panel.y)}
          </text>
          <Grid layout={layout} placed={placed} />
          <Marks layout={layout} placed={placed} />
        </g>
      ))}
      {xTicks.map(({ at, text }) => (
        <TickText key={at} at={x(at)} y={foot + line} text={text} end={width} letter={letter} />
      ))}
      <text class="pb-axis" x={right} y={foot + line * 2.2} text-anchor="end">
        {axisTitle(xAxis)}
      </text>
    </>
  );
}
