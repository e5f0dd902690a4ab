import type { IncomingMessage, ServerResponse } from 'node:http';
import sirv from 'sirv';
import { dist } from './paths.js';
import { officeSource, servedPolicy } from './policy.js';

type Handler = (request: IncomingMessage, response: ServerResponse) => void;

/** Answers requests from dist/, or another folder, with the headers that a real host should send too. */
export function siteHandler(folder = dist): Handler {
  const office = officeSource();
  const files = sirv(folder, {
    // Files are looked up at each request, so that a rebuild shows without a restart.
    dev: true,
    setHeaders: (response, pathname) => {
      const page = pathname.includes('taskpane') ? 'taskpane' : 'workbook';
      response.setHeader('Content-Security-Policy', servedPolicy(page, office));
      response.setHeader('X-Content-Type-Options', 'nosniff');
      response.setHeader('Referrer-Policy', 'no-referrer');
      response.setHeader('Cache-Control', 'no-cache');
      // Excel on the web reads the metadata from another origin.
      if (/functions(\.\w+)?\.json$/.test(pathname)) response.setHeader('Access-Control-Allow-Origin', '*');
    },
  });
  return (request, response) => {
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response
        .writeHead(405, { Allow: 'GET, HEAD', 'Content-Type': 'text/plain' })
        .end('Only GET and HEAD are answered.\n');
      return;
    }
    // Browsers ask for it beside a plain text, which cannot name an icon.
    if (request.url === '/favicon.ico') response.writeHead(204).end();
    else files(request, response);
  };
}
