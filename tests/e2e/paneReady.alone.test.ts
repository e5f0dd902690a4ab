import { expect, it, onTestFinished } from 'vitest';
import { paneInExcel } from './paneInExcel.js';

it('is ready in under 300 ms after its script has arrived', async () => {
  const { page, close } = await paneInExcel();
  onTestFinished(close);
  await page.addInitScript(() => {
    new MutationObserver((_, watching) => {
      if (!document.querySelector('[role="tab"]')) return;
      performance.mark('ready');
      watching.disconnect();
    }).observe(document, { childList: true, subtree: true });
  });
  const times: number[] = [];
  for (let turn = 0; turn < 5; turn++) {
    await page.reload();
    await page.getByRole('tab').first().waitFor();
    const took = await page.evaluate(() => {
      const scripts = performance.getEntriesByType('resource') as PerformanceResourceTiming[];
      const arrived = scripts.find(({ name }) => name.endsWith('/pane.js'))?.responseEnd ?? Number.NaN;
      return (performance.getEntriesByName('ready')[0]?.startTime ?? Number.NaN) - arrived;
    });
    times.push(took);
  }
  // The machine may be busy with something else in some of the turns.
  console.log(`The pane is ready after ${Math.round(Math.min(...times))} ms at best of ${times.length}`);
  expect(Math.min(...times)).toBeGreaterThan(0);
  expect(Math.min(...times)).toBeLessThan(300);
});
