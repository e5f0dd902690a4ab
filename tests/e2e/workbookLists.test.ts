import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { OFFERS } from '../../src/sheets/quotes/offers.js';
import { quotes } from '../../src/sheets/quotes.js';
import { type OpenWorkbook, openWorkbook, paste } from './workbookPage.js';

/** Offers of one’s own, more than the example has, in no order of their prices. */
const OWN = Array.from({ length: 20 }, (_, index) => {
  const [price, dose] = [910 + 13 * ((index * 7) % 20), 64 + ((index * 3) % 9)];
  return { name: `Offer ${index + 1}`, price, dose, cost: (dose / 1000) * (price / 400 + 0.2) };
});
const least = OWN.reduce((one, other) => (other.cost < one.cost ? other : one));
const priciest = OWN.reduce((one, other) => (other.price > one.price ? other : one));

const first = quotes.rows.findIndex(([cell]) => cell?.text === 'State') + 3;
const heads = quotes.rows[first - 3]?.map(({ text }) => text) ?? [];
const letter = (head: string) => String.fromCharCode(65 + heads.indexOf(head));
const { cheapestQuote = '', rankedOffers = '' } = quotes.names;

let workbook: OpenWorkbook;
beforeAll(async () => {
  workbook = await openWorkbook();
  await workbook.page.getByRole('tab', { name: 'Sheets' }).click();
  await workbook.page.getByRole('button', { name: 'Insert Quotes' }).click();
  await workbook.page.getByText('The sheet Quotes was inserted.').waitFor();
});
afterAll(() => workbook.close());

async function shows(place: string, text: string) {
  await workbook.go(place);
  await expect.poll(workbook.selected, { timeout: 30_000 }).toContain(`Value${text}`);
}
const press = (name: string) => workbook.page.getByRole('button', { name, exact: true }).click();

describe('a list of a starter sheet', () => {
  it('takes twenty offers pasted over nine, and names the cheapest', async () => {
    await shows(rankedOffers, `${OFFERS.length} of ${OFFERS.length}`);
    await workbook.go(`B${first}`);
    const lines = OWN.map(({ name, price, dose }) =>
      [name, 'hydrogel', price, 400, 0.2, 0, 0, 0, 0.61, dose].join('\t'),
    );
    await paste(workbook.page, lines.join('\n'));
    await shows(rankedOffers, '20 of 20');
    await shows(cheapestQuote, least.name);
  });

  it('is sorted by a column that is filled in, with all that formulas say of its rows', async () => {
    await workbook.go(`${letter('Pack price')}${first + 4}`);
    await press('Sort descending');
    await shows(`B${first}`, priciest.name);
    await shows(`${letter('Pack price')}${first}`, priciest.price.toLocaleString('en-GB'));
    await shows(`A${first}`, 'complete');
    await shows(cheapestQuote, least.name);
    await shows(rankedOffers, '20 of 20');
  });

  it('takes a filter on and off, and ranks all of its offers as before', async () => {
    await workbook.go(`${letter('Kind')}${first + 4}`);
    await press('Filter');
    await shows(rankedOffers, '20 of 20');
    await workbook.go(`${letter('Kind')}${first + 4}`);
    await press('Filter');
    await shows(cheapestQuote, least.name);
  });

  it('names the cell that blocks its answers', async () => {
    await workbook.enter(`${letter('Cost')}${first + 7}`, '0.01');
    await workbook.go(cheapestQuote);
    await expect.poll(workbook.selected, { timeout: 30_000 }).toMatch(/Valuesee [A-Z]+\d+/);
    await workbook.go(`${letter('Cost')}${first + 7}`);
    await workbook.page.keyboard.press('Delete');
    await shows(cheapestQuote, least.name);
  });
});
