const CONTENT = { unit: 'mg/kg', limit: [0, 1e6] } as const;

/** What a powder holds of something that can go over into the beer. */
export const content = {
  ...CONTENT,
  help: 'In the powder as bought, from the certificate of analysis or your own laboratory.',
  source: 'The limits only keep out what cannot be: more than the whole powder.',
} as const;

export const UPPER_BOUND = 'an upper bound: as if all of it went into the beer and none stayed in the cake';
