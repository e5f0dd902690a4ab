import { readFileSync } from 'node:fs';
import { chromium } from 'playwright-core';
import { browserFlags, ensureBrowser } from '../browser.js';
import { path } from '../paths.js';

// 16, 32 and 80 are the sizes that the ribbon asks for, 64 and 128 those of the add-in list.
const sizes = [16, 32, 64, 80, 128];
const drawing = readFileSync(path('taskpane/assets/icon.svg'), 'utf8');

const browser = await chromium.launch({ executablePath: ensureBrowser(), args: browserFlags });
for (const size of sizes) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  await page.setContent(
    `<style>body { margin: 0 } svg { display: block; width: 100vw; height: 100vh }</style>${drawing}`,
  );
  await page.screenshot({ path: path(`taskpane/assets/icon-${size}.png`), omitBackground: true });
  await page.close();
}
await browser.close();
console.log(`Drawn: ${sizes.map((size) => `icon-${size}.png`).join(', ')}`);
