import { dotsAt, placeText } from './dots.js';
import type { Layout, PlacedPanel } from './layout.js';
import type { Mark, Point } from './picture.js';

interface Props {
  readonly layout: Layout;
  readonly placed: PlacedPanel;
}

/** Pixels between a line and its text. */
const GAP = 5;

/** Texts of upright lines at the same end stand below each other, so that near ones can both be read. */
function rowOf(marks: readonly Mark[], mark: Mark): number {
  const same = marks.filter((one) => one.kind === 'upright' && mark.kind === 'upright' && one.end === mark.end);
  return same.indexOf(mark);
}

export function Marks({ layout, placed }: Props) {
  const { marks } = placed.panel;
  return (
    <>
      {marks.map((mark, index) => (
        <MarkOf key={index} mark={mark} row={rowOf(marks, mark)} layout={layout} placed={placed} />
      ))}
    </>
  );
}

/** A text of some length beside an upright line: behind it, before it, or across it where neither side has room. */
function beside(at: number, length: number, left: number, right: number) {
  if (at + GAP + length <= right) return { x: at + GAP, 'text-anchor': 'start' } as const;
  return { x: at - GAP - length >= left ? at - GAP : right, 'text-anchor': 'end' } as const;
}

function MarkOf({ mark, row, layout, placed }: Props & { readonly mark: Mark; readonly row: number }) {
  const { x, left, right, line, letter } = layout;
  const { y, top, bottom } = placed;
  const place = (point: Point) => placeText(x(point.x), y(point.y));
  switch (mark.kind) {
    case 'curve':
      return <path class={`pb-curve pb-curve-${mark.set ?? 0}`} d={`M${mark.points.map(place).join('L')}`} />;
    case 'dots':
      return (
        <path
          class={`pb-dots pb-dots-${mark.set ?? 0}`}
          d={dotsAt(
            mark.points.map((point) => [x(point.x), y(point.y)] as const),
            mark.set,
          )}
        />
      );
    case 'columns':
      return (
        <g class="pb-columns">
          {mark.columns.map(({ from, to, height }) => (
            <rect key={from} x={x(from)} y={y(height)} width={Math.max(0, x(to) - x(from))} height={y(0) - y(height)} />
          ))}
        </g>
      );
    case 'spot':
      return <circle class="pb-spot" cx={x(mark.at.x)} cy={y(mark.at.y)} r="4.5" />;
    case 'level': {
      const at = y(mark.at);
      const above = at - top > line * 0.9;
      return (
        <>
          <line class={mark.text ? 'pb-limit' : 'pb-zero'} x1={left} x2={right} y1={at} y2={at} />
          {mark.text && (
            <text class="pb-said" x={left + GAP} y={at + (above ? -line * 0.3 : line * 0.9)}>
              {mark.text}
            </text>
          )}
        </>
      );
    }
    case 'upright': {
      const at = x(mark.at);
      const height = mark.end === 'foot' ? bottom - line * (0.35 + row) : top + line * (0.85 + row);
      return (
        <>
          <line class={mark.plain ? 'pb-place' : 'pb-end'} x1={at} x2={at} y1={top} y2={bottom} />
          <text class="pb-said" y={height} {...beside(at, mark.text.length * letter, left, right)}>
            {mark.text}
          </text>
        </>
      );
    }
  }
}
