import { createServer } from 'node:http';
import { build, pages } from '../bundle.js';
import { listen } from '../listen.js';
import { siteHandler } from '../serve.js';

const port = 4180;

try {
  const serve = siteHandler();
  let ready = false;
  const server = createServer((request, response) => {
    if (ready) return serve(request, response);
    response
      .writeHead(503, { 'Content-Type': 'text/plain', Refresh: '3', 'Retry-After': '3' })
      .end('Powderbook is still being built. This page opens it as soon as it is.\n');
  });
  // The port is taken first: nobody should wait for a build only to read that there is no room for it.
  await listen(server, port);
  console.log('Building: the first time takes up to a minute.');
  console.log(await build(pages));
  ready = true;
  console.log(`\nThe workbook is at http://localhost:${port}\nStop with Ctrl+C.`);
} catch (failure) {
  console.error(failure instanceof Error ? failure.message : failure);
  process.exit(1);
}
