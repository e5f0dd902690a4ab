import { kept } from './smallStorage.js';

/** The sheet that was shown last, for the next time the page opens: by its id, and the first one where none is kept. */
export const shownSheet = kept(() => localStorage, 'powderbook sheet');
