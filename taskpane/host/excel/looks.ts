import type { CellStyle } from '../host.js';

interface Look {
  readonly bold?: true;
  readonly italic?: true;
  readonly size?: number;
  readonly color: string;
  readonly fill?: string;
  readonly border?: string;
  readonly indent?: number;
}

const INK = '#1d2b2f';
const MUTED = '#4d5f63';

/** What a person fills in is told apart by its frame as well as by its ground. */
const LOOKS: Readonly<Record<CellStyle, Look>> = {
  title: { bold: true, size: 14, color: INK },
  heading: { bold: true, color: INK },
  label: { color: INK },
  input: { color: INK, fill: '#fff6d6', border: '#b98d1f' },
  result: { bold: true, color: INK, fill: '#e3f1ee', border: '#5c938a' },
  unit: { color: MUTED, indent: 1 },
  note: { italic: true, color: MUTED },
  caution: { bold: true, color: '#8a2f12' },
};

const EDGES = ['EdgeTop', 'EdgeBottom', 'EdgeLeft', 'EdgeRight'] as const;

/** Queues the look of one cell. */
export function dress({ format }: Excel.Range, style: CellStyle): void {
  const { bold = false, italic = false, size, color, fill, border, indent } = LOOKS[style];
  format.font.bold = bold;
  format.font.italic = italic;
  format.font.color = color;
  if (size !== undefined) format.font.size = size;
  // Away from the figure that ends at the cell's left edge.
  if (indent !== undefined) format.indentLevel = indent;
  if (fill !== undefined) format.fill.color = fill;
  if (border === undefined) return;
  for (const edge of EDGES) {
    const line = format.borders.getItem(edge);
    line.style = 'Continuous';
    line.color = border;
  }
}
