import { render } from 'preact';
import type { Host } from '../host/host.js';
import { App } from './App.js';
import './pane.css';
import './controls.css';
import './parts.css';
import './card.css';
import './fields.css';
import './range.css';

/**
 * Shows the pane inside an element of the page.
 * @param locale the user's language and country; it settles words and decimal marks.
 */
export function mountPane(element: HTMLElement, host: Host, locale: string = navigator.language): void {
  render(<App host={host} locale={locale} />, element);
}
