import { createServer } from 'node:http';
import { chromium } from 'playwright-core';
import type { TestProject } from 'vitest/node';
import { browserFlags, ensureBrowser } from './browser.js';
import { listen } from './listen.js';
import { siteHandler } from './serve.js';

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
  const server = createServer(siteHandler());
  const port = await listen(server, 0, '127.0.0.1');
  const shared = await chromium.launchServer({ executablePath: ensureBrowser(), args: browserFlags });
  project.provide('site', `http://127.0.0.1:${port}`);
  project.provide('browser', shared.wsEndpoint());
  return async () => {
    await shared.close();
    server.closeAllConnections();
    server.close();
  };
}
