import { createServer } from 'node:http';
import { type BrowserServer, chromium } from 'playwright-core';
import { browserFlags, ensureBrowser } from './browser.js';
import { listen } from './listen.js';
import { siteHandler } from './serve.js';

export interface Site {
  readonly address: string;
  readonly browser: BrowserServer;
  close(): Promise<void>;
}

/** Serves a folder, dist/ if none is named, on a free port and starts a browser to look at it. */
export async function openSite(folder?: string): Promise<Site> {
  const server = createServer(siteHandler(folder));
  const port = await listen(server, 0, '127.0.0.1');
  const browser = await chromium.launchServer({ executablePath: ensureBrowser(), args: browserFlags });
  return {
    address: `http://127.0.0.1:${port}`,
    browser,
    close: async () => {
      await browser.close();
      server.closeAllConnections();
      server.close();
    },
  };
}
