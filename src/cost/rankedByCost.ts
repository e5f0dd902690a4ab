/** Costs that differ by less than this share of themselves differ by rounding only. */
const TIE = 1e-12;

/** Cheapest first. What costs the same shares a rank and keeps its order; the rank after a tie skips the shared places. */
export function rankedByCost<Q extends { readonly cost: number }>(quotes: readonly Q[]): (Q & { rank: number })[] {
  const ordered = [...quotes.entries()].sort(([, one], [, other]) => one.cost - other.cost);
  let rank = 0;
  let cheapest = Number.NEGATIVE_INFINITY;
  const ranked = ordered.map(([row, quote], place) => {
    if (quote.cost > cheapest * (1 + TIE)) {
      rank = place + 1;
      cheapest = quote.cost;
    }
    return { row, quote: { ...quote, rank } };
  });
  return ranked
    .sort((one, other) => one.quote.rank - other.quote.rank || one.row - other.row)
    .map(({ quote }) => quote);
}
