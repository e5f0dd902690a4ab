import { createServer, type Server } from 'node:http';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { listen } from '../../.config/listen.js';
import { siteHandler } from '../../.config/serve.js';

let server: Server;
let site: string;
beforeAll(async () => {
  server = createServer(siteHandler());
  site = `http://127.0.0.1:${await listen(server, 0, '127.0.0.1')}`;
});
afterAll(() => {
  server.closeAllConnections();
  server.close();
});

describe('the server of the built site', () => {
  it.each(['GET', 'HEAD'])('answers %s', async (method) => {
    const response = await fetch(`${site}/workbook.html`, { method });
    expect(response.status).toBe(200);
    expect((await response.text()).length > 0).toBe(method === 'GET');
  });

  it.each(['POST', 'PUT', 'DELETE', 'OPTIONS', 'PATCH'])('answers %s with what it does answer', async (method) => {
    const response = await fetch(`${site}/workbook.html`, { method });
    expect(response.status).toBe(405);
    expect(response.headers.get('allow')).toBe('GET, HEAD');
  });

  it('has nothing to say, and no error, where a browser asks for the icon of a plain text', async () => {
    expect((await fetch(`${site}/favicon.ico`)).status).toBe(204);
  });

  it('lets nobody show the workbook within another page, and Excel on the web the pane', async () => {
    const policy = async (page: string) =>
      (await fetch(`${site}/${page}`)).headers.get('content-security-policy')?.split('; ').at(-1);
    expect(await policy('workbook.html')).toBe("frame-ancestors 'none'");
    expect(await policy('')).toBe("frame-ancestors 'none'");
    expect(await policy('taskpane.html')).toContain(" 'self' https://*.live.com ");
  });
});
