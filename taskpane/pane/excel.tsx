import { excelHost } from '../host/excel.js';
import { languageOf, loadTexts } from '../texts/texts.js';
import { mountPane } from './mount.js';
import { addCommands } from './ribbon.js';

/** Excel's own language where there is one; its numbers follow it. */
const localeOf = (): string => Office.context?.contentLanguage || Office.context?.displayLanguage || navigator.language;

/**
 * Outside Excel nothing more is wanted of office.js, and what it has put off would ask a host of Microsoft's for a page
 * that collects telemetry. This page has no timers of its own there.
 */
function forgetWhatIsPutOff(): void {
  for (let timer = window.setTimeout(() => {}); timer > 0; timer -= 1) window.clearTimeout(timer);
}

async function start(element: HTMLElement): Promise<void> {
  const { host } = await Office.onReady();
  const locale = localeOf();
  document.documentElement.lang = languageOf(locale);
  if (host === Office.HostType.Excel) {
    const workbook = excelHost();
    addCommands(workbook, await mountPane(element, workbook, locale));
    return;
  }
  forgetWhatIsPutOff();
  const texts = await loadTexts(locale);
  const main = document.createElement('main');
  main.className = 'pb-pane pb-outside';
  const title = document.createElement('h1');
  const sentence = document.createElement('p');
  title.textContent = texts.pane;
  sentence.textContent = texts.outside;
  main.append(title, sentence);
  element.replaceChildren(main);
}

const element = document.getElementById('pane');
if (element) void start(element);
