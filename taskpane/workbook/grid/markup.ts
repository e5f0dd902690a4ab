function set(element: Element, name: string, value: string) {
  if (element.getAttribute(name) !== value) element.setAttribute(name, value);
}

/** What the engine's own elements lack for those who hear the page or use it without a pointer. */
function mend(container: HTMLElement) {
  // Two regions have the same name; each needs its own to be told apart.
  document.querySelectorAll('section[aria-label^="Notifications"]').forEach((region, place) => {
    set(
      region,
      'aria-label',
      place === 0 ? 'Notifications of the grid' : `Notifications of the grid, part ${place + 1}`,
    );
  });
  // The cells take their keys through a hidden field; a drawing in the order of the Tab key would only be in the way.
  for (const canvas of container.querySelectorAll('canvas')) set(canvas, 'tabindex', '-1');
  for (const field of container.querySelectorAll('input[type="text"]:not([aria-label])')) {
    set(field, 'aria-label', 'Address or name of the cell');
  }
  for (const opener of container.querySelectorAll('a[data-slot="popover-trigger"]')) {
    set(opener, 'role', 'button');
    set(opener, 'tabindex', '0');
    set(opener, 'aria-label', 'Names in this workbook');
  }
  for (const button of document.querySelectorAll('button:not([aria-label]):has(.univerjs-icon-close-icon)')) {
    set(button, 'aria-label', 'Close');
  }
}

export function mendMarkup(container: HTMLElement) {
  mend(container);
  new MutationObserver(() => mend(container)).observe(document.body, { childList: true, subtree: true });
}
