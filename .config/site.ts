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

/** A browser for which there is no host but this machine, whatever a page asks for. */
export const openBrowser = (): Promise<BrowserServer> =>
  chromium.launchServer({
    executablePath: ensureBrowser(),
    args: [...browserFlags, '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1'],
  });

/** Serves a folder, dist/ if none is named, on a free port and starts a browser to look at it. */
export async function openSite(folder?: string): Promise<Site> {
  const server = createServer(siteHandler(folder));
  const port = await listen(server, 0, '127.0.0.1');
  const browser = await openBrowser();
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
