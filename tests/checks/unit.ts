import type { PublishedCheck } from './check.js';

type Kind = PublishedCheck['kind'];

/** A conversion as a check. */
export const unit = (
  value: number,
  from: string,
  to: string,
  expected: number,
  tolerance: number,
  source: string,
  kind: Kind,
  wider?: string,
): PublishedCheck => ({
  calculation: 'TOUNIT',
  given: { value, from, to },
  expected,
  tolerance,
  source,
  kind,
  ...(wider === undefined ? {} : { wider }),
});
