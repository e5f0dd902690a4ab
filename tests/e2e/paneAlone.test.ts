import { expect, it } from 'vitest';
import { visit } from './browser.js';

it('says in a plain browser that the page belongs inside Excel, and names the embedded workbook', async () => {
  const { page, close } = await visit('taskpane.html');
  await page.getByText('This page belongs inside Excel').waitFor();
  expect(await page.getByRole('main').textContent()).toContain('workbook.html');
  await close();
});

it('asks no other host for anything, not even what its policy would stop', async () => {
  const { page, close } = await visit('index.html');
  const stopped: string[] = [];
  await page.exposeFunction('stopped', (address: string) => stopped.push(address));
  await page.addInitScript(() => {
    const tell = (globalThis as unknown as { stopped(address: string): void }).stopped;
    document.addEventListener('securitypolicyviolation', ({ blockedURI }) => tell(blockedURI));
  });
  await page.goto(page.url().replace('index.html', 'taskpane.html'));
  await page.getByText('This page belongs inside Excel').waitFor();
  // office.js puts its request off for three seconds.
  await page.waitForFunction(() => performance.now() > 5000);
  expect(await page.locator('iframe').count()).toBe(0);
  expect(stopped).toEqual([]);
  await close();
});
