import type { TestProject } from 'vitest/node';
import { openSite } from './site.js';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where dist/ is served while the browser tests run. */
    site: string;
    /** Where the one browser listens that all browser tests share. */
    browser: string;
  }
}

/** Serves dist/ on a free port and starts one browser for all browser tests. */
export default async function setup(project: TestProject) {
  const { address, browser, close } = await openSite();
  project.provide('site', address);
  project.provide('browser', browser.wsEndpoint());
  return close;
}
