import type { TestProject } from 'vitest/node';
import { openBrowser, openSite } from './site.js';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where dist/ is served while the browser tests run. */
    site: string;
    /** Where the browsers listen, one for each worker: pages of one browser share its clipboard. */
    browsers: readonly string[];
  }
}

/** Serves dist/ on a free port and starts a browser for each worker. */
export default async function setup(project: TestProject) {
  const { address, browser, close } = await openSite();
  const others = await Promise.all(Array.from({ length: project.config.maxWorkers - 1 }, openBrowser));
  project.provide('site', address);
  project.provide(
    'browsers',
    [browser, ...others].map((one) => one.wsEndpoint()),
  );
  return async () => {
    await Promise.all(others.map((one) => one.close()));
    await close();
  };
}
