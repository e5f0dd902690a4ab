import type { Beer } from '../../src/sheets/year/beers.js';

/** 1 darcy in m². */
const DARCY = 9.869232667160128e-13;

/** What a beer costs in a year, line by line as one would write it on paper; money. */
export function yearByHand({ yearVolume, viscosity, beerSolids, bodyFeed, stabiliserDose }: Beer, side: 0 | 1) {
  const [moisture, gel, price] = side === 0 ? [0.64, 0.02, 2.4] : [0.01, 0.08, 2.8];
  const feed = bodyFeed[side];
  const dose = stabiliserDose[side];

  // Dry solids of one hL, g: filter aid, stabiliser, beer.
  const aid = feed * (1 - 0.005);
  const stabiliser = dose * (1 - moisture);
  const solids = aid + stabiliser + beerSolids;

  // Permeability of their mixture, and the pressure drop of 1 kg/m² of it at 240 hL/h on 48 m².
  const logarithm = aid * Math.log(0.1) + stabiliser * Math.log(gel) + beerSolids * Math.log(1e-4);
  const resistance = 1 / (Math.exp(logarithm / solids) * DARCY * 300);
  const velocity = 24 / 3600 / 48;
  const barPerLoad = ((viscosity / 1000) * velocity * (resistance * 100) * 10) / 1000 / 1e5;

  // The run ends at 4.5 bar from 0.6 bar, or at 6.5 kg/m² with 796 g/m² of dry precoat.
  const precoat = 0.8 * (1 - 0.005);
  const laid = Math.min((4.5 - 0.6) / barPerLoad, 6.5 - precoat);
  const run = (laid * 48 * 1000) / solids;
  const runs = yearVolume / run;

  // kg of wet cake at 25 % dry matter.
  const cake = (precoat * 48 * runs + (solids / 1000) * yearVolume) / 0.25;

  const money = {
    Precoat: 0.8 * 48 * 0.8 * runs,
    'Body feed': (feed / 1000) * yearVolume * 0.8,
    Stabiliser: (dose / 1000) * yearVolume * price,
    Disposal: (cake / 1000) * 70,
    Water: 15 * 3.5 * runs,
    Energy: 500 * 0.1 * runs,
    'Beer loss': 6 * 30 * runs,
    Labour: 3 * 42 * runs,
    Downtime: 4 * 60 * runs,
    Cleaning: 60 * runs,
  };
  const total = Object.values(money).reduce((sum, one) => sum + one, 0);
  const powder = (0.8 * 48 * runs + ((feed + dose) / 1000) * yearVolume) / 1000;
  return { run, money, total, tonnes: { powder, cake: cake / 1000 }, water: 15 * runs, lost: 6 * runs, idle: 4 * runs };
}
