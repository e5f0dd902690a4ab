import { useRef, useState } from 'preact/hooks';
import type { Texts } from '../../texts/dictionary.js';
import type { OpenedWorkbook } from '../grid/opened.js';
import type { Book } from '../xlsx/book.js';
import { leavesColours } from '../xlsx/filter.js';
import { tooLarge } from '../xlsx/tooLarge.js';
import type { Offer } from '../xlsx/writeOffer.js';
import { Dialog } from './dialog.js';
import { fileName } from './fileName.js';
import type { Store } from './state.js';
import { useWords } from './words.js';

const XLSX = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** The add-in that the file offers in Excel: the one whose manifest stands beside this page. */
async function offered(): Promise<Offer | undefined> {
  const response = await fetch('manifest.xml');
  if (!response.ok) return undefined;
  const manifest = new DOMParser().parseFromString(await response.text(), 'application/xml');
  const said = (name: string) => manifest.getElementsByTagName(name)[0]?.textContent?.trim() ?? '';
  return said('Id') && said('Version') ? { id: said('Id'), version: said('Version') } : undefined;
}

/** Hands bytes to the browser as a file. */
function handOver(bytes: Uint8Array, name: string): void {
  const address = URL.createObjectURL(new Blob([bytes as Uint8Array<ArrayBuffer>], { type: XLSX }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser has taken what it needs once the click is done.
  setTimeout(() => URL.revokeObjectURL(address));
}

/** What the file holds: the workbook with its formulas, or with values in place of ours, all of it or one sheet. */
const WAYS = ['formulas', 'values', 'sheet'] as const;
type Way = (typeof WAYS)[number];

interface Content {
  readonly bytes: Uint8Array;
  readonly name: string;
}

async function contentOf(book: Book, way: Way, words: Texts['save']): Promise<Content> {
  // The writer is needed by few and loaded with the first file.
  const { asValues, sheetAsValues, writeBook } = await import(/* webpackChunkName: "xlsx-write" */ '../xlsx/write.js');
  const shown = book.active ?? book.sheets[0]?.name ?? '';
  const whole = `${words.file} ${shown}`;
  if (way === 'formulas') {
    const offer = await offered().catch(() => undefined);
    return { bytes: writeBook(book, offer), name: whole };
  }
  if (way === 'values') return { bytes: writeBook(asValues(book)), name: words.valuesFile(whole) };
  return { bytes: writeBook(sheetAsValues(book, shown)), name: words.valuesFile(shown) };
}

/** The choice of what the file holds, each way with what it is for. */
function Ways({ way, onWay }: { readonly way: Way; onWay(way: Way): void }) {
  const { title, ways } = useWords().save;
  return (
    <fieldset class="workbook-ways" aria-label={title}>
      {WAYS.map((one) => (
        <label key={one}>
          <input type="radio" name="way" checked={way === one} onChange={() => onWay(one)} />
          <span>
            <strong>{ways[one].label}</strong>
            <br />
            {ways[one].sentence}
          </span>
        </label>
      ))}
    </fieldset>
  );
}

/** The button that saves the workbook as an .xlsx file, and the question what the file should hold. */
export function SaveFile({ store, workbook }: { store: Store; workbook: OpenedWorkbook | undefined }) {
  const { save: words, open } = useWords();
  const [busy, setBusy] = useState(false);
  const failed = useRef(() => {});
  const [asked, setAsked] = useState(false);
  const [way, setWay] = useState<Way>('formulas');

  async function write(from: OpenedWorkbook) {
    setBusy(true);
    failed.current();
    try {
      const book = from.book();
      const reason = tooLarge(book, open);
      const { bytes, name } = await contentOf(book, way, words);
      handOver(bytes, fileName(name, new Date()));
      store.tell(reason === undefined ? words.saved[way === 'formulas' ? way : 'values'] : words.tooLarge(reason));
      if (leavesColours(book)) store.tell(words.coloursLeft);
    } catch {
      failed.current = store.tell(words.failed);
    } finally {
      setBusy(false);
    }
  }
  return (
    <>
      <button type="button" disabled={!workbook || busy} onClick={() => setAsked(true)}>
        {busy ? words.busy : words.button}
      </button>
      {asked && workbook && (
        <Dialog
          title={words.title}
          confirm={words.confirm}
          onConfirm={() => void write(workbook)}
          onClose={() => setAsked(false)}
        >
          <Ways way={way} onWay={setWay} />
        </Dialog>
      )}
    </>
  );
}
