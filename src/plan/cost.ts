import type { CostPlan } from './input.js';
import type { Run } from './run.js';
import { type Solids, solidsOf } from './solids.js';

/** One item of cost: what each run takes, and what each m³ of beer takes besides. */
export interface CostItem {
  readonly label: string;
  perRun?(plan: CostPlan, solids: Solids): number;
  perBeer?(plan: CostPlan, solids: Solids, bodyFeed: number): number;
}

const precoatPrice = ({ precoatPrice, aidPrice }: CostPlan): number => (precoatPrice === 0 ? aidPrice : precoatPrice);

const perWetCake = ({ disposalPrice, dryMatter }: CostPlan): number => disposalPrice / dryMatter;

export const COST_ITEMS: readonly CostItem[] = [
  { label: 'Precoat', perRun: (plan) => plan.precoatLoad * plan.area * precoatPrice(plan) },
  { label: 'Body feed', perBeer: (plan, _, bodyFeed) => bodyFeed * plan.aidPrice },
  { label: 'Stabiliser', perBeer: (plan) => plan.stabiliserDose * plan.stabiliserPrice },
  {
    label: 'Disposal',
    perRun: (plan, { precoat }) => precoat * plan.area * perWetCake(plan),
    perBeer: (plan, { total }) => total * perWetCake(plan),
  },
  { label: 'Water', perRun: (plan) => plan.runWater * plan.waterPrice },
  { label: 'Energy', perRun: (plan) => plan.runEnergy * plan.energyPrice },
  { label: 'Beer loss', perRun: (plan) => plan.runBeerLoss * plan.beerValue },
  { label: 'Labour', perRun: (plan) => plan.runLabour * plan.labourPrice },
  { label: 'Downtime', perRun: (plan) => plan.turnaround * plan.downtimeCost },
  { label: 'Cleaning', perRun: (plan) => plan.cleaningCost },
  { label: 'Other', perBeer: (plan) => plan.otherCost },
];

/** Cost of one item for each m³ of beer. */
export function itemCost(item: CostItem, plan: CostPlan, { solids, volume, bodyFeed }: Run): number {
  const perRun = item.perRun?.(plan, solids) ?? 0;
  const perBeer = item.perBeer?.(plan, solids, bodyFeed) ?? 0;
  return perBeer + perRun / volume;
}

/** Cost of all items for each m³ of beer. */
export const costOf = (plan: CostPlan, run: Run): number =>
  COST_ITEMS.reduce((sum, item) => sum + itemCost(item, plan, run), 0);

/** What each run costs whatever its length. */
export function costPerRun(plan: CostPlan): number {
  const solids = solidsOf(plan);
  return COST_ITEMS.reduce((sum, { perRun }) => sum + (perRun?.(plan, solids) ?? 0), 0);
}

/** What one kg of body feed as bought costs, disposal of its dry matter included. */
export const costPerFeed = (plan: CostPlan): number => plan.aidPrice + (1 - plan.aidMoisture) * perWetCake(plan);

/** Spent cake of one run as discharged, kg. */
export const spentCake = (plan: CostPlan, { solids, volume }: Run): number =>
  (solids.precoat * plan.area + solids.total * volume) / plan.dryMatter;
