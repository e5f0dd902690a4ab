import { calculation } from '../core/calculation.js';
import { dose, moisture, price } from '../quantities.js';
import { DUTY_SOURCE, dutyOn, withDuty } from './duty.js';
import { landedPrice } from './landedPrice.js';
import { rankedByCost } from './rankedByCost.js';

/** What landed prices hold already. */
const added = { kind: 'series', least: 1, oneForAll: true, optional: true, preset: undefined } as const;

export const rankQuotes = calculation({
  id: 'RANKQUOTES',
  summary: 'Offers of powder side by side, cheapest per hL first.',
  question: 'Which offer is the cheapest once water and dose are counted?',
  inputs: {
    names: {
      kind: 'names',
      label: 'Names',
      help: 'One for each offer; a name that is missing stays empty, and a row that is blank throughout is passed over.',
    },
    prices: {
      ...price,
      kind: 'series',
      least: 1,
      label: 'Prices',
      limit: [1e-6, 1e7],
      help: 'Per kg as bought, landed (LANDEDPRICE), one for each offer. No price is an offer not yet made, so 0 is refused.',
    },
    moistures: {
      ...moisture,
      kind: 'series',
      least: 1,
      label: 'Moistures',
      help: 'Of each powder as bought (wet basis). Write 65 % or 0.65.',
    },
    dryDoses: {
      ...dose,
      kind: 'series',
      least: 1,
      oneForAll: true,
      label: 'Dry doses',
      limit: [0.001, 10_000],
      usual: [5, 150],
      help: 'Dry powder for each hL. One cell serves all offers of one kind. Across kinds give each its own, at equal effect on your beer (LADDERDOSE, then DRYMASS): equal dry mass is not equal effect.',
      source: 'Usual range derived from the doses of gels as bought, less their water.',
    },
    freights: {
      ...landedPrice.inputs.freight,
      ...added,
      label: 'Freights',
      help: 'For each kg, where the prices are without it: one for all offers, or one each.',
    },
    duties: {
      ...landedPrice.inputs.duty,
      ...added,
      label: 'Duties',
      help: 'Share of the price, where the prices are without it: one for all offers, or one each. Write 5 % or 0.05.',
    },
    dutyOn,
  },
  output: {
    kind: 'table',
    fields: {
      rank: { label: 'Rank', unit: '' },
      name: { label: 'Name', text: true },
      price: { label: 'Price', unit: 'money/kg' },
      dryPrice: { label: 'Dry price', unit: 'money/kg' },
      cost: { label: 'Cost', unit: 'money/hL' },
    },
  },
  method:
    'dry price = price with freight and duty, where given, / (1 − moisture), per kg of dry powder; cost per hL = dry dose × dry price. Offers that cost the same share a rank and keep their order',
  sources: ['Balance of dry matter: water is paid for and does no work.', DUTY_SOURCE],
  cautions: ['dust'],
  example: {
    given: { names: ['gel', 'dry gel'], prices: [2.1, 5.7], moistures: [0.65, 0.05], dryDoses: [21] },
    result: { rows: 2 },
  },
  compute: ({ names, prices, moistures, dryDoses, freights, duties, dutyOn }) =>
    rankedByCost(
      Array.from(prices, (goods, row) => {
        const price = withDuty({ goods, freight: freights?.[row] ?? 0, duty: duties?.[row] ?? 0, dutyOn });
        const dryPrice = price / (1 - (moistures[row] as number));
        return { name: names[row] ?? '', price, dryPrice, cost: (dryDoses[row] as number) * dryPrice };
      }),
    ),
});
