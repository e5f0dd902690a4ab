import { useState } from 'preact/hooks';
import { useSetting } from '../setting.js';
import { axisTitle } from './axisTitle.js';
import type { Picture } from './picture.js';

const DIGITS = 6;

/** The picture's figures as a table, made only once somebody asks for it. */
export function Figures({ table: { columns, rows } }: Pick<Picture, 'table'>) {
  const { texts, formats } = useSetting();
  const [open, setOpen] = useState(false);
  const shown = (cell: number | string | undefined, column: number): string => {
    if (typeof cell !== 'number') return cell ?? '';
    return formats.number(Number(cell.toPrecision(DIGITS)), columns[column]?.unit ?? '');
  };
  return (
    <details onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>{texts.picture.table}</summary>
      {open && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard.
        <section class="pb-scroll pb-figures" tabIndex={0} aria-label={texts.picture.table}>
          <table>
            <thead>
              <tr>
                {columns.map((column, index) => (
                  <th key={index} scope="col">
                    {axisTitle(column)}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {rows.map((row, index) => (
                <tr key={index}>
                  {row.map((cell, column) => (
                    <td key={column}>{shown(cell, column)}</td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
    </details>
  );
}
