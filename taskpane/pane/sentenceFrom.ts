import type { Texts } from '../texts/texts.js';

/** What to say of a host call that failed. The hosts' own errors are sentences already. */
export function sentenceFrom(error: unknown, texts: Texts): string {
  const detail = error instanceof Error ? error.message : String(error);
  return /^\p{Lu}.*\.$/su.test(detail) ? detail : texts.failed(detail);
}
