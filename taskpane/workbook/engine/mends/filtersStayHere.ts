import type { Univer } from '../core.js';
import { DataSyncPrimaryController } from '../rpc.js';
import { servicesOf } from '../services.js';

const FILTERS = /^sheet\.mutation\..*filter/;

/**
 * The engine sends what is done to filters to the thread that calculates, where nothing knows them, and that is the end of
 * all calculation. Its setting against that has no effect on commands without options.
 */
export function keepFiltersHere(univer: Univer): void {
  const sync = servicesOf(univer).get(DataSyncPrimaryController);
  const register = sync.registerSyncingMutations.bind(sync);
  sync.registerSyncingMutations = (mutation) => {
    if (!FILTERS.test(mutation.id)) register(mutation);
  };
}
