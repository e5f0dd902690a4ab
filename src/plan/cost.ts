import type { CostPlan } from './input.js';
import type { Run } from './run.js';
import { type Solids, solidsOf } from './solids.js';

/** One item of cost: what each run takes, and what each m³ of beer takes besides. */
export interface CostItem {
  readonly label: string;
  perRun?(plan: CostPlan, solids: Solids): number;
  perBeer?(plan: CostPlan, solids: Solids, bodyFeed: number): number;
}

type PerRun = NonNullable<CostItem['perRun']>;
type PerBeer = NonNullable<CostItem['perBeer']>;

const precoatPrice = ({ precoatPrice, aidPrice }: CostPlan): number => (precoatPrice === 0 ? aidPrice : precoatPrice);

const perWetCake = ({ disposalPrice, dryMatter }: CostPlan): number => disposalPrice / dryMatter;

const precoat: PerRun = (plan) => plan.precoatLoad * plan.area * precoatPrice(plan);
const precoatDisposal: PerRun = (plan, solids) => solids.precoat * plan.area * perWetCake(plan);
const water: PerRun = (plan) => plan.runWater * plan.waterPrice;
const energy: PerRun = (plan) => plan.runEnergy * plan.energyPrice;
const beerLoss: PerRun = (plan) => plan.runBeerLoss * plan.beerValue;
const labour: PerRun = (plan) => plan.runLabour * plan.labourPrice;
const downtime: PerRun = (plan) => plan.turnaround * plan.downtimeCost;
const cleaning: PerRun = (plan) => plan.cleaningCost;

const bodyFeed: PerBeer = (plan, _, bodyFeed) => bodyFeed * plan.aidPrice;
const stabiliser: PerBeer = (plan) => plan.stabiliserDose * plan.stabiliserPrice;
const solidsDisposal: PerBeer = (plan, { total }) => total * perWetCake(plan);
const other: PerBeer = (plan) => plan.otherCost;

export const COST_ITEMS: readonly CostItem[] = [
  { label: 'Precoat', perRun: precoat },
  { label: 'Body feed', perBeer: bodyFeed },
  { label: 'Stabiliser', perBeer: stabiliser },
  { label: 'Disposal', perRun: precoatDisposal, perBeer: solidsDisposal },
  { label: 'Water', perRun: water },
  { label: 'Energy', perRun: energy },
  { label: 'Beer loss', perRun: beerLoss },
  { label: 'Labour', perRun: labour },
  { label: 'Downtime', perRun: downtime },
  { label: 'Cleaning', perRun: cleaning },
  { label: 'Other', perBeer: other },
];

/** Cost of one item for each m³ of beer. */
export function itemCost(item: CostItem, plan: CostPlan, { solids, volume, bodyFeed }: Run): number {
  const perRun = item.perRun?.(plan, solids) ?? 0;
  const perBeer = item.perBeer?.(plan, solids, bodyFeed) ?? 0;
  return perBeer + perRun / volume;
}

// The sums name their items one by one, since a walk through the list would cost a sample of SAVINGSPREAD three times
// its arithmetic. A property test holds them to the list.
const sumPerRun: PerRun = (plan, solids) =>
  precoat(plan, solids) +
  precoatDisposal(plan, solids) +
  water(plan, solids) +
  energy(plan, solids) +
  beerLoss(plan, solids) +
  labour(plan, solids) +
  downtime(plan, solids) +
  cleaning(plan, solids);

const sumPerBeer: PerBeer = (plan, solids, feed) =>
  bodyFeed(plan, solids, feed) +
  stabiliser(plan, solids, feed) +
  solidsDisposal(plan, solids, feed) +
  other(plan, solids, feed);

/** Cost of all items for each m³ of beer. */
export const costOf = (plan: CostPlan, { solids, volume, bodyFeed }: Run): number =>
  sumPerBeer(plan, solids, bodyFeed) + sumPerRun(plan, solids) / volume;

/** What each run costs whatever its length. */
export const costPerRun = (plan: CostPlan): number => sumPerRun(plan, solidsOf(plan));

/** What one kg of body feed as bought costs, disposal of its dry matter included. */
export const costPerFeed = (plan: CostPlan): number => plan.aidPrice + (1 - plan.aidMoisture) * perWetCake(plan);

/** Spent cake of one run as discharged, kg. */
export const spentCake = (plan: CostPlan, { solids, volume }: Run): number =>
  (solids.precoat * plan.area + solids.total * volume) / plan.dryMatter;
