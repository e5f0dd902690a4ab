import type { Block, BlockCell } from '../host/host.js';

/** A block under construction: cells are put anywhere, and come out as a rectangle. */
export class Canvas {
  private readonly cells: BlockCell[][] = [];

  put(row: number, column: number, ...cells: readonly BlockCell[]): void {
    while (this.cells.length <= row) this.cells.push([]);
    for (const [index, { text, ...cell }] of cells.entries()) {
      (this.cells[row] as BlockCell[])[column + index] = text ? { text, ...cell } : cell;
    }
  }

  get height(): number {
    return this.cells.length;
  }

  get width(): number {
    return Math.max(0, ...this.cells.map((row) => row.length));
  }

  block(): Block {
    const { width } = this;
    return { rows: this.cells.map((row) => Array.from({ length: width }, (_, column) => row[column] ?? {})) };
  }
}
