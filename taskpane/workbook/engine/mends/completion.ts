import { ICommandService, type Univer } from '../core.js';
import { IEditorService } from '../docsUi.js';
import { servicesOf } from '../services.js';
import { IDescriptionService } from '../sheetsFormula.js';
import { type IShortcutItem, IShortcutService, KeyCode } from '../ui.js';

/** How the engine calls the keys of its list of functions. */
const LIST = 'sheet.formula-embedding-editor.search_function.';
/** Functions that one list shows. */
const MOST_LISTED = 10;
/** The beginning of a name that stands right before the cursor. */
const NAME = /[\p{L}_][\p{L}\p{N}_.]*$/u;

/**
 * The engine's list of functions comes a moment after the keys, and takes Enter and Tab for its first entry even where
 * more was typed meanwhile. Here an entry is taken by Enter only if it was chosen with the arrow keys, and by neither
 * where the list was made for other letters than those that now stand there. A list begins with its
 * first entry; the engine's with the one where mouse or arrow keys left the last list, be it beyond the end of this one.
 */
export function takeCompletionsOnPurpose(univer: Univer): void {
  const injector = servicesOf(univer);
  const descriptions = injector.get(IDescriptionService);
  const shortcuts = injector.get(IShortcutService);
  const commands = injector.get(ICommandService);
  let listed = '';
  let chosen = false;
  let rewinding = false;

  const search = descriptions.getSearchListByNameFirstLetter.bind(descriptions);
  descriptions.getSearchListByNameFirstLetter = (letters) => {
    if (letters !== listed) {
      chosen = false;
      window.requestAnimationFrame(() => beginAtFirst());
    }
    listed = letters;
    return search(letters);
  };

  /** What stands before the cursor. */
  const typed = (): string => {
    const field = injector.get(IEditorService).getFocusEditor();
    const end = field?.getSelectionRanges()[0]?.startOffset;
    return field?.getDocumentData().body?.dataStream.slice(0, end ?? undefined) ?? '';
  };
  const isCurrent = () => NAME.exec(typed())?.[0].toUpperCase() === listed.toUpperCase();
  const takes: Readonly<Record<number, () => boolean>> = {
    [KeyCode.TAB]: isCurrent,
    [KeyCode.ENTER]: () => chosen && isCurrent(),
  };
  const register = shortcuts.registerShortcut.bind(shortcuts);
  shortcuts.registerShortcut = (item: IShortcutItem) => {
    const preconditions = item.id.startsWith(LIST) && item.binding !== undefined ? takes[item.binding] : undefined;
    return register(preconditions ? { ...item, preconditions } : item);
  };

  /** A new list begins with its first entry, wherever the mouse or the arrow keys left the last one. */
  function beginAtFirst(frames = 10) {
    if (chosen) return;
    const id = `${LIST}${injector.get(IEditorService).getFocusEditor()?.getEditorId()}`;
    if (!commands.hasCommand(id)) {
      if (frames > 0) window.requestAnimationFrame(() => beginAtFirst(frames - 1));
      return;
    }
    rewinding = true;
    for (let n = 0; n < MOST_LISTED; n++) commands.syncExecuteCommand(id, { keyCode: KeyCode.ARROW_UP });
    rewinding = false;
  }

  commands.onCommandExecuted(({ id, params }) => {
    const { keyCode } = (params ?? {}) as { keyCode?: KeyCode };
    if (rewinding || !id.startsWith(LIST)) return;
    if (keyCode === KeyCode.ARROW_DOWN || keyCode === KeyCode.ARROW_UP) chosen = true;
  });
}
