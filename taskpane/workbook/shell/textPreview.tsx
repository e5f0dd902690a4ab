import type { ReadText } from '../text/readText.js';
import { useWords } from './words.js';

interface Props {
  readonly read: ReadText;
  /** Keeps a column as text, or reads it again. */
  onText(column: number, isText: boolean): void;
}

/** More columns than these are read all the same. */
const SHOWN = 30;

/** The first rows of a text file, under what is understood of each column. */
export function TextPreview({ read: { columns, first, headerRows, rows }, onText }: Props) {
  const { text } = useWords().open;
  const shown = columns.slice(0, SHOWN);
  return (
    <section class="workbook-text-preview" aria-label={text.preview}>
      <table>
        <caption>{text.size(rows, columns.length)}</caption>
        <thead>
          <tr>
            {shown.map(({ title, kind, texts }, column) => (
              <th key={column} scope="col">
                <span>{title || text.column(column + 1)}</span>
                <br />
                {kind === 'blank' ? (
                  text.kinds.blank
                ) : (
                  <select
                    aria-label={text.kindOf(title || text.column(column + 1))}
                    value={kind === 'text' ? 'text' : 'read'}
                    onChange={({ currentTarget }) => onText(column, currentTarget.value === 'text')}
                  >
                    <option value="read">{kind === 'text' ? text.asRead : text.kinds[kind]}</option>
                    <option value="text">{text.kinds.text}</option>
                  </select>
                )}
                {texts > 0 && <small>{text.texts(texts)}</small>}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {first.map((row, index) => (
            <tr key={index} class={index < headerRows ? 'workbook-text-title' : undefined}>
              {shown.map((_, column) => (
                <td key={column}>{row[column]}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
