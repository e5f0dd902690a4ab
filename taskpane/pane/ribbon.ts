import { SHEET_KEYS } from '../../src/sheets/keys.js';
import type { Host } from '../host/host.js';

/** What the manifest calls the entry that inserts a starter sheet. */
export const commandOf = (key: string): string => `insert_${key}`;

const tabs = () => import(/* webpackChunkName: "tabs" */ './otherTabs.js');

/**
 * Has the entries of the ribbon's menu insert their sheets. The pane need not be seen for that; where an insertion fails
 * it is shown, and the cause told there, until one succeeds.
 */
export function addCommands(host: Host, tell: (cause?: unknown) => void): void {
  for (const key of SHEET_KEYS) {
    Office.actions.associate(commandOf(key), async (event: Office.AddinCommands.Event) => {
      try {
        const { starterSheets } = await tabs();
        for (const sheet of starterSheets) if (sheet.key === key) await host.insertSheet(sheet);
        tell();
      } catch (cause) {
        tell(cause);
        await Office.addin.showAsTaskpane();
      } finally {
        event.completed();
      }
    });
  }
}
