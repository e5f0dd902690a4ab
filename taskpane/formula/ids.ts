import { NAMESPACE } from '../../functions/metadata.js';
import { catalogue } from '../../src/catalogue.js';

const KNOWN: ReadonlySet<string> = new Set(catalogue.map(({ id }) => id));

/** A file opened without the add-in shows a function under this mark, its dot as a low line. */
const STRANGE = '_XLDUDF_';

/** The id of one of our functions by the name that stands in a formula. */
export function idOf(name: string): string | undefined {
  const upper = name.toUpperCase();
  const start = upper.startsWith(STRANGE) ? `${STRANGE}${NAMESPACE}_` : `${NAMESPACE}.`;
  const id = upper.slice(start.length);
  return upper.startsWith(start) && KNOWN.has(id) ? id : undefined;
}
