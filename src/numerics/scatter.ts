import { mean } from './sums.js';

/** A line through the sizes of residuals is looked for so often, each time weighted by the last one. */
const ROUNDS = 3;
/** Nowhere is the scatter taken for less than this share of its mean. */
const LEAST = 0.15;
/** Scatter is taken to grow where the line’s slope is so many of its squared standard errors. */
const CLEAR = 2;

/**
 * How far readings scatter at each place, as a line through the sizes of their residuals over the places (the test of
 * Glejser): the same everywhere where the line hardly slopes.
 */
export function scatterAlong(residuals: Float64Array, places: Float64Array): Float64Array {
  const count = residuals.length;
  const sizes = residuals.map(Math.abs);
  const usual = mean(sizes);
  const even = new Float64Array(count).fill(usual);
  let scatter = even;
  let clear = 0;
  for (let round = 0; round < ROUNDS && usual > 0; round++) {
    const { slope, height, middle, squares, weighed } = weightedLine(places, sizes, scatter);
    if (!(weighed > 0)) return even;
    clear = (slope ** 2 * weighed * (count - 2)) / squares;
    scatter = places.map((place) => Math.max(height + slope * (place - middle), LEAST * usual));
  }
  return clear > CLEAR ? scatter : even;
}

/** The line through sizes, each weighted by the inverse square of what it scatters. */
function weightedLine(x: Float64Array, y: Float64Array, scatter: Float64Array) {
  let weight = 0;
  let sumX = 0;
  let sumY = 0;
  for (let i = 0; i < x.length; i++) {
    const one = (scatter[i] as number) ** -2;
    weight += one;
    sumX += one * (x[i] as number);
    sumY += one * (y[i] as number);
  }
  const [middle, height] = [sumX / weight, sumY / weight];
  let weighed = 0;
  let together = 0;
  for (let i = 0; i < x.length; i++) {
    const away = ((x[i] as number) - middle) * (scatter[i] as number) ** -2;
    weighed += away * ((x[i] as number) - middle);
    together += away * ((y[i] as number) - height);
  }
  const slope = together / weighed;
  let squares = 0;
  for (let i = 0; i < x.length; i++) {
    const left = (y[i] as number) - height - slope * ((x[i] as number) - middle);
    squares += (left / (scatter[i] as number)) ** 2;
  }
  return { slope, height, middle, weighed, squares };
}
