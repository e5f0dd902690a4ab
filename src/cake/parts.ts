/** Dry solids of a cake by part, in any one unit. */
export interface PartSolids {
  readonly aid: number;
  readonly stabiliser: number;
  readonly beer: number;
}

/** Permeability of each part, m². */
export interface PartPermeabilities {
  readonly aid: number;
  readonly stabiliser: number;
  readonly beer: number;
}

/**
 * How much the other parts take from the filter aid's permeability: k = k_aid e^(−H/c) at c solids in all.
 * At c = H the pressure rises least with each m³ of beer: less feed blinds the cake, more only fills its space.
 */
export const hindrance = (solids: PartSolids, permeabilities: PartPermeabilities): number =>
  solids.stabiliser * Math.log(permeabilities.aid / permeabilities.stabiliser) +
  solids.beer * Math.log(permeabilities.aid / permeabilities.beer);

/** Specific resistance of the mixed cake, m/kg. */
export function mixedResistance(solids: PartSolids, permeabilities: PartPermeabilities, cakeDensity: number): number {
  const total = solids.aid + solids.stabiliser + solids.beer;
  return Math.exp(hindrance(solids, permeabilities) / total) / (permeabilities.aid * cakeDensity);
}
