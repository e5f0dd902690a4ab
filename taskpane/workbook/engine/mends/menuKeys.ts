import type { Univer } from '../core.js';
import { servicesOf } from '../services.js';
import { ContextMenuPosition, IContextMenuService, ILayoutService } from '../ui.js';

/** The menu, and each part of it that opens beside. */
const PART = '[data-u-context-menu-submenu]';
const MENU = `.univer-popup, ${PART}`;
const buttonsIn = (menu: Element) =>
  [...menu.querySelectorAll<HTMLButtonElement>('button:not(:disabled)')].filter((button) =>
    button.checkVisibility({ visibilityProperty: true }),
  );

/** Looks again until the engine has drawn what it was asked for, for a moment at most. */
function whenDrawn<T>(look: () => T | undefined, then: (found: T) => void, tries = 30) {
  const found = look();
  if (found) then(found);
  else if (tries > 0) requestAnimationFrame(() => whenDrawn(look, then, tries - 1));
}

/** Opens the engine's menu on cells at a place of the page and gives it the keys: it listens to the mouse alone. */
export function openMenuAt(univer: Univer, place: { readonly clientX: number; readonly clientY: number }): void {
  const injector = servicesOf(univer);
  const menus = injector.get(IContextMenuService);
  menus.triggerContextMenu(new MouseEvent('contextmenu', place) as never, ContextMenuPosition.MAIN_AREA);
  const first = () => [...document.querySelectorAll(MENU)].flatMap(buttonsIn)[0];
  const leave = () => {
    document.removeEventListener('keydown', move, { capture: true });
    menus.hideContextMenu();
    injector.get(ILayoutService).focus();
  };
  const openPart = (button: HTMLButtonElement) => {
    const known = new Set([...document.querySelectorAll(MENU)].flatMap(buttonsIn));
    for (const type of ['mouseover', 'mouseenter']) button.dispatchEvent(new MouseEvent(type, { bubbles: true }));
    const opened = () => [...document.querySelectorAll(MENU)].flatMap(buttonsIn).find((one) => !known.has(one));
    whenDrawn(opened, (one) => one.focus());
  };
  const keys: Readonly<Record<string, (button: HTMLButtonElement, all: readonly HTMLButtonElement[]) => void>> = {
    ArrowDown: (button, all) => all[(all.indexOf(button) + 1) % all.length]?.focus(),
    ArrowUp: (button, all) => all.at(all.indexOf(button) - 1)?.focus(),
    ArrowRight: (button) => openPart(button),
    ArrowLeft: () => first()?.focus(),
    Escape: leave,
    Tab: leave,
    Enter: (button) => {
      button.click();
      // What opens a part of the menu stays; anything else is done, and the cells have the keys again.
      if (button.closest(PART) || !document.querySelector(MENU)) leave();
      else openPart(button);
    },
  };
  const move = (event: KeyboardEvent) => {
    const button = document.activeElement;
    if (!(button instanceof HTMLButtonElement) || !button.closest(MENU)) return leave();
    const key = keys[event.key];
    if (!key) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    const menu = button.closest(MENU);
    if (menu) key(button, buttonsIn(menu));
  };
  whenDrawn(first, (button) => {
    button.focus();
    document.addEventListener('keydown', move, { capture: true });
  });
}
