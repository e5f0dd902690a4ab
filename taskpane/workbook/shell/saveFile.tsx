import { useState } from 'preact/hooks';
import type { OpenedWorkbook } from '../grid/opened.js';
import { tooLarge } from '../xlsx/tooLarge.js';
import type { Offer } from '../xlsx/writeOffer.js';
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

/** The button that saves the workbook as an .xlsx file. */
export function SaveFile({ store, workbook }: { store: Store; workbook: OpenedWorkbook | undefined }) {
  const { save: words, open } = useWords();
  const [busy, setBusy] = useState(false);

  async function write(from: OpenedWorkbook) {
    const { file, saved, failed } = words;
    setBusy(true);
    try {
      // The writer is needed by few and loaded with the first file.
      const { writeBook } = await import(/* webpackChunkName: "xlsx-write" */ '../xlsx/writeBook.js');
      const offer = await offered().catch(() => undefined);
      const book = from.book();
      const reason = tooLarge(book, open);
      handOver(writeBook(book, offer), `${file}.xlsx`);
      store.tell(reason === undefined ? saved : words.tooLarge(reason));
    } catch {
      store.tell(failed);
    } finally {
      setBusy(false);
    }
  }
  return (
    <button type="button" disabled={!workbook || busy} onClick={() => workbook && void write(workbook)}>
      {busy ? words.busy : words.button}
    </button>
  );
}
