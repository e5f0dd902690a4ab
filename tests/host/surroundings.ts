import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

/** The platform's own script of that name, as it comes with office.js. */
export const platformFile = (name: string): string =>
  readFileSync(createRequire(import.meta.url).resolve(`@microsoft/office-js/dist/${name}`), 'utf8');

/** The bridge between a host and the platform's scripts: texts of JSON in both directions. */
export interface Bridge {
  onMessageFromHost(text: string): void;
  sendMessageToHost(text: string): void;
}

/** What the platform's scripts look for in the page or engine that they are loaded into. */
export const surroundings = (script: string, bridge: Bridge) => ({
  console,
  // Answers are gathered for a while before they are handed over; here nothing else is to come.
  setTimeout: (act: () => void) => setTimeout(act, 0),
  clearTimeout,
  document: {
    readyState: 'complete',
    addEventListener() {},
    createElement: () => ({ setAttribute() {} }),
    getElementsByTagName: (name: string) =>
      name === 'script' ? [{ src: `/${script}`, getAttribute() {} }] : [{ appendChild() {} }],
  },
  location: { search: '', href: '' },
  navigator: { userAgent: '' },
  history: {},
  sessionStorage: { getItem: () => null, setItem() {} },
  _richApiNativeBridge: bridge,
});
