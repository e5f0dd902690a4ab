import { Refusal } from '../host/refusal.js';
import type { Texts } from '../texts/texts.js';

/** What to say of a host call that failed. A host says its own refusals in the pane's language. */
export function sentenceFrom(error: unknown, texts: Texts): string {
  if (error instanceof Refusal) return error.say(texts.host);
  const detail = error instanceof Error ? error.message : String(error);
  return texts.failed(detail);
}
