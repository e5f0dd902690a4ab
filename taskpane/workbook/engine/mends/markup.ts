import type { Texts } from '../../../texts/texts.js';

/** Notes on the element what it lacked, so that a test notices once the engine has it. */
function set(element: Element, name: string, value: string) {
  const before = element.getAttribute(name);
  if (before === value) return;
  element.setAttribute('data-mended', `${element.getAttribute('data-mended') ?? ''} ${name}`.trim());
  element.setAttribute(name, value);
}

/** Its panel of what a filter lets through. */
function mendFilter(words: Texts) {
  for (const panel of document.querySelectorAll(
    '[data-u-comp="sheets-filter-panel"]:not([role]):not([data-u-comp="sheets-filter-panel"] *)',
  )) {
    set(panel, 'role', 'dialog');
    set(panel, 'aria-label', words.format.filter);
  }
  const panel = '[data-u-comp="sheets-filter-panel"]';
  for (const box of document.querySelectorAll(`${panel} input[type="checkbox"]:not([aria-label])`)) {
    const text = box.closest('label')?.parentElement?.textContent?.trim();
    set(box, 'aria-label', text || words.format.filter);
  }
}

/** What the engine's own elements lack for those who hear the page or use it without a pointer. */
function mend(container: HTMLElement, texts: Texts) {
  const { workbook: words } = texts;
  const { grid } = words;
  mendFilter(texts);
  // Two regions have the same name; each needs its own to be told apart.
  document
    .querySelectorAll(`section[aria-label^="Notifications"], section[aria-label^="${grid.notifications}"]`)
    .forEach((region, place) => {
      set(region, 'aria-label', place === 0 ? grid.notifications : grid.moreNotifications(String(place + 1)));
    });
  // The cells take their keys through a hidden field; a drawing in the order of the Tab key would only be in the way.
  for (const canvas of container.querySelectorAll('canvas')) set(canvas, 'tabindex', '-1');
  for (const field of container.querySelectorAll('input[type="text"]:not([aria-label])')) {
    set(field, 'aria-label', grid.address);
  }
  for (const opener of container.querySelectorAll('a[data-slot="popover-trigger"]')) {
    set(opener, 'role', 'button');
    set(opener, 'tabindex', '0');
    set(opener, 'aria-label', grid.names);
  }
  // The choices of its search are buttons to the hand alone.
  for (const choice of document.querySelectorAll('div[data-u-comp="select"][aria-haspopup]:not([role])')) {
    set(choice, 'role', 'button');
    set(choice, 'tabindex', '0');
  }
  for (const button of document.querySelectorAll('button:not([aria-label]):has(.univerjs-icon-close-icon)')) {
    set(button, 'aria-label', words.close);
  }
}

export function mendMarkup(container: HTMLElement, words: Texts) {
  mend(container, words);
  new MutationObserver(() => mend(container, words)).observe(document.body, { childList: true, subtree: true });
}
