import type { CellStyle } from '../host.js';
import { LOOKS } from '../looks.js';

const EDGES = ['EdgeTop', 'EdgeBottom', 'EdgeLeft', 'EdgeRight'] as const;

/** Queues the look of one cell. */
export function dress({ format }: Excel.Range, style: CellStyle, align?: 'right' | 'indented'): void {
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
  if (underline !== undefined) draw(format, 'EdgeBottom', underline);
  if (border !== undefined) for (const edge of EDGES) draw(format, edge, border);
}

function draw(format: Excel.RangeFormat, edge: (typeof EDGES)[number], color: string): void {
  const line = format.borders.getItem(edge);
  line.style = 'Continuous';
  line.color = color;
}
