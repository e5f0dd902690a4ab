const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ');

const row = (cells: readonly string[]): string => `| ${cells.map(cell).join(' | ')} |`;

/** A table in Markdown. */
export const table = (header: readonly string[], rows: readonly (readonly string[])[]): string =>
  [row(header), row(header.map(() => '---')), ...rows.map(row)].join('\n');
