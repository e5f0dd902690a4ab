import { flatLoad } from '../cake/pressureDrop.js';
import type { RunPlan } from './input.js';

/** The precoat’s own pressure drop as it changes with its load, Pa: only where its permeability is known. */
function precoatDrop({ aidPermeability, cakeDensity, aidMoisture, ...plan }: RunPlan, load: number): number {
  if (aidPermeability === undefined) return 0;
  const flat = flatLoad(load * (1 - aidMoisture), { septumRadius: plan.septumRadius, cakeDensity });
  return ((plan.viscosity * plan.flow) / plan.area) * (flat / (aidPermeability * cakeDensity));
}

/**
 * Start pressure drop at the plan’s own flow, viscosity and precoat, from what it was read at: laminar through septum and
 * precoat, so that it goes with flow and viscosity; more precoat adds its own.
 */
export function startOf(plan: RunPlan): number {
  const { startPressure, startFlow, startViscosity, startPrecoat } = plan;
  let start = startPressure;
  if (startFlow > 0) start *= plan.flow / startFlow;
  if (startViscosity > 0) start *= plan.viscosity / startViscosity;
  if (startPrecoat > 0) start += precoatDrop(plan, plan.precoatLoad) - precoatDrop(plan, startPrecoat);
  return Math.max(0, start);
}
