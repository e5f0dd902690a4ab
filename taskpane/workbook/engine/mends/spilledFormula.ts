import type { Univer } from '../core.js';
import { servicesOf } from '../services.js';
import { IEditorBridgeService } from '../sheetsUi.js';

/** Quieter than the letters of a cell's own formula; the engine turns it round where it is dark. */
const QUIET = '#4e5565';

/**
 * The engine shows the formula that fills a cell from elsewhere in a grey that is read with difficulty on white, and not
 * at all in the dark.
 */
export function mendSpilledFormula(univer: Univer): void {
  const bridge = servicesOf(univer).get(IEditorBridgeService);
  const latest = bridge.getLatestEditCellState.bind(bridge);
  bridge.getLatestEditCellState = () => {
    const state = latest();
    const body = state?.isInArrayFormulaRange ? state.documentLayoutObject.documentModel?.getBody() : undefined;
    for (const { ts } of body?.textRuns ?? []) if (ts?.cl) ts.cl.rgb = QUIET;
    return state;
  };
}
