import type { Texts } from '../../../texts/texts.js';

/** Notes on the element what it lacked, so that a test notices once the engine has it. */
function set(element: Element, name: string, value: string) {
  const before = element.getAttribute(name);
  if (before === value) return;
  element.setAttribute('data-mended', `${element.getAttribute('data-mended') ?? ''} ${name}`.trim());
  element.setAttribute(name, value);
}

/** What the engine's own elements lack for those who hear the page or use it without a pointer. */
function mend(container: HTMLElement, words: Texts['workbook']) {
  const { grid } = words;
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
  for (const button of document.querySelectorAll('button:not([aria-label]):has(.univerjs-icon-close-icon)')) {
    set(button, 'aria-label', words.close);
  }
}

export function mendMarkup(container: HTMLElement, words: Texts['workbook']) {
  mend(container, words);
  new MutationObserver(() => mend(container, words)).observe(document.body, { childList: true, subtree: true });
}
