/** The address that the committed manifest and the committed metadata name. */
export const developmentAddress = 'https://localhost:3000';

/** The address a build is made for: POWDERBOOK_ADDRESS, or the development address. Throws unless it is an https address. */
export function buildAddress(given = process.env.POWDERBOOK_ADDRESS): string {
  if (!given) return developmentAddress;
  const refuse = (why: string) =>
    new Error(`POWDERBOOK_ADDRESS ${why}, such as https://powder.example.com; given: ${given}`);
  if (!URL.canParse(given)) throw refuse('must be a full address');
  const address = new URL(given);
  // Excel loads an add-in over https only.
  if (address.protocol !== 'https:') throw refuse('must begin with https://');
  if (address.search || address.hash) throw refuse('must end before any ? or #');
  return address.href.replace(/\/+$/, '');
}
