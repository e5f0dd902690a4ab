import { cakeLabels } from './labels/cake.js';
import { filterLabels } from './labels/filter.js';
import { powderLabels } from './labels/powder.js';
import { priceLabels } from './labels/prices.js';
import { yearLabels } from './labels/year.js';

/** Every label of a plan, by key, in the order in which sheets and pane show them. */
export const PLAN = { ...filterLabels, ...powderLabels, ...cakeLabels, ...priceLabels, ...yearLabels } as const;

export const PLAN_GROUPS = ['filter', 'powder', 'cake', 'prices', 'year'] as const;
export type PlanGroup = (typeof PLAN_GROUPS)[number];
