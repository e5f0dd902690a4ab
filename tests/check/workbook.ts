import type { CellContent } from '../../taskpane/host/host.js';
import type { WorkbookContents } from '../../taskpane/host/workbookContents.js';

type Rows = readonly (readonly CellContent[])[];

/** A workbook of such rows from A1 on; `shown` says what formulas give, by their address as `row,column`. */
export function workbook(sheets: Record<string, Rows>, shown: Record<string, CellContent> = {}): WorkbookContents {
  return {
    active: Object.keys(sheets)[0] ?? '',
    names: [{ name: 'moisture', formula: 'Sheet1!$B$1' }],
    sheets: Object.entries(sheets).map(([name, formulas]) => ({
      name,
      row: 0,
      column: 0,
      formulas,
      values: formulas.map((line, row) =>
        line.map((one, column) =>
          typeof one === 'string' && one.startsWith('=') ? (shown[`${row},${column}`] ?? 0) : one,
        ),
      ),
    })),
  };
}
