import type { CautionName } from './core/calculation.js';

/** The words of every caution, once: pane, reference and starter sheets read them here. */
export const CAUTIONS: Readonly<Record<CautionName, string>> = {
  dust: 'Powder dust can hold crystalline silica, which harms lungs. Keep it out of the air, and follow the local limit, the safety data sheet and the site’s licensed hygienist.',
  pressure:
    'The vessel’s plate sets the pressure limit. Local codes and licensed practice come before any figure calculated here.',
  caustic: 'Caustic burns skin and eyes. Follow the safety data sheet and the site’s rules for handling it.',
  'food law': 'The local food authority decides what may be used and what must be declared; this is no legal advice.',
};
