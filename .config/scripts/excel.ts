import { createServer, type ServerOptions } from 'node:https';
import { developmentAddress } from '../address.js';
import { build, pages } from '../bundle.js';
import { certificates } from '../certificates.js';
import { listen } from '../listen.js';
import { siteHandler } from '../serve.js';

try {
  const options: ServerOptions = await certificates();
  const server = createServer(options, siteHandler());
  await listen(server, Number(new URL(developmentAddress).port));
  console.log(await build(pages));
  console.log(`\nThe add-in is served at ${developmentAddress}`);
  console.log('Load dist/manifest.xml into Excel as DEVELOPERS.md says. Stop with Ctrl+C.');
} catch (failure) {
  console.error(failure instanceof Error ? failure.message : failure);
  process.exit(1);
}
