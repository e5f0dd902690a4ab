import type { CellStyle } from '../host.js';
import { LOOKS } from '../looks.js';
import type { Shape } from './areas.js';

const SINGLE: Shape = { tall: false, wide: false };
const EDGES = ['EdgeTop', 'EdgeBottom', 'EdgeLeft', 'EdgeRight'] as const;

/** Queues the look of cells, of which each has a frame or line of its own. */
export function dress(
  { format }: Excel.Range | Excel.RangeAreas,
  style: CellStyle,
  align?: 'right' | 'indented',
  { tall, wide } = SINGLE,
): void {
  const { bold = false, italic = false, size, color, fill, border, underline, indent } = LOOKS[style];
  format.font.bold = bold;
  format.font.italic = italic;
  format.font.color = color;
  if (size !== undefined) format.font.size = size;
  // Away from the figure that ends at the cell's left edge.
  const by = align === 'indented' ? LOOKS.unit.indent : indent;
  if (align === 'right') format.horizontalAlignment = 'Right';
  else if (by !== undefined) format.indentLevel = by;
  if (fill !== undefined) format.fill.color = fill;
  const between = tall ? (['InsideHorizontal'] as const) : [];
  if (underline !== undefined) for (const edge of ['EdgeBottom', ...between] as const) draw(format, edge, underline);
  const inside = wide ? ([...between, 'InsideVertical'] as const) : between;
  if (border !== undefined) for (const edge of [...EDGES, ...inside]) draw(format, edge, border);
}

type Edge = (typeof EDGES)[number] | 'InsideHorizontal' | 'InsideVertical';
function draw(format: Excel.RangeFormat, edge: Edge, color: string): void {
  const line = format.borders.getItem(edge);
  line.style = 'Continuous';
  line.color = color;
}
