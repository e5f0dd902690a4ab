interface Props {
  readonly at: number;
  readonly y: number;
  readonly text: string;
  /** Where the picture ends. */
  readonly end: number;
  readonly letter: number;
}

/** A number under its tick, moved inwards where it would run out of the picture. */
export function TickText({ at, y, text, end, letter }: Props) {
  const half = (text.length * letter) / 2;
  return (
    <text x={Math.max(half, Math.min(at, end - half))} y={y} text-anchor="middle">
      {text}
    </text>
  );
}
