/** Tab-separated text as other spreadsheets put it on the clipboard; quotes hold line breaks and tabs together. */
export function cellsOfText(text: string): string[][] {
  const cells =
    text
      .replace(/\r\n?/g, '\n')
      .replace(/\n$/, '')
      .match(/"(?:[^"]|"")*"(?=[\t\n]|$)|[^\t\n]+|[\t\n]/g) ?? [];
  const rows: string[][] = [['']];
  for (const cell of cells) {
    const row = rows.at(-1) as string[];
    if (cell === '\n') rows.push(['']);
    else if (cell === '\t') row.push('');
    else if (cell !== '') row[row.length - 1] = /^".*"$/s.test(cell) ? cell.slice(1, -1).replaceAll('""', '"') : cell;
  }
  return rows;
}
