import { render } from 'preact';
import type { Host } from '../host/host.js';
import { loadTexts } from '../texts/texts.js';
import { App } from './App.js';
import { sentenceFrom } from './sentenceFrom.js';
import './pane.css';
import './controls.css';
import './parts.css';
import './card/card.css';
import './form/fields.css';
import './range/range.css';
import './explain/explain.css';
import './check/check.css';
import './picture/picture.css';

/**
 * Shows the pane inside an element of the page, once its language is loaded.
 * @param locale the user's language and country; it settles words and decimal marks.
 * @returns tells in the pane why something failed that was asked for elsewhere; without a cause, that it no longer does.
 */
export async function mountPane(
  element: HTMLElement,
  host: Host,
  locale: string = navigator.language,
): Promise<(cause?: unknown) => void> {
  const texts = await loadTexts(locale);
  const show = (told: string) => render(<App host={host} locale={locale} texts={texts} told={told} />, element);
  show('');
  return (cause) => show(cause === undefined ? '' : sentenceFrom(cause, texts));
}
