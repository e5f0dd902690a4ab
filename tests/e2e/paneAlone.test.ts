import { expect, it } from 'vitest';
import { visit } from './browser.js';

it('says in a plain browser that the page belongs inside Excel, and names the embedded workbook', async () => {
  const { page, close } = await visit('taskpane.html');
  await page.getByText('This page belongs inside Excel').waitFor();
  expect(await page.getByRole('main').textContent()).toContain('workbook.html');
  await close();
});
