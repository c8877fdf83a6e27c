/** Below this the series is summed, above it the continued fraction is used. */
const seam = 2;

/** exp(x^2) erfc(x) for x >= seam, by the continued fraction 1/(x + (1/2)/(x + 1/(x + (3/2)/(x + ...)))) / sqrt(pi), from the tail. */
function scaledTail(x: number): number {
  let tail = x;
  for (let k = 120; k >= 1; k -= 1) tail = x + k / 2 / tail;
  return 1 / (tail * Math.sqrt(Math.PI));
}

/** Error function, to about 1e-14. Source: Abramowitz and Stegun (1964), 7.1.6 and 7.1.14. */
export function erf(x: number): number {
  if (x < 0) return -erf(-x);
  if (x >= seam) return 1 - Math.exp(-x * x) * scaledTail(x);
  let term = x;
  let sum = x;
  for (let k = 1; Math.abs(term) > 1e-17 * sum; k += 1) {
    term *= (2 * x * x) / (2 * k + 1);
    sum += term;
  }
  return ((2 * sum) / Math.sqrt(Math.PI)) * Math.exp(-x * x);
}

/** 1 - erf(x), without loss of figures for large x. */
export const erfc = (x: number): number => (x >= seam ? Math.exp(-x * x) * scaledTail(x) : 1 - erf(x));

/** exp(x^2) erfc(x), which stays finite for every x >= 0. */
export const scaledErfc = (x: number): number => (x >= seam ? scaledTail(x) : Math.exp(x * x) * erfc(x));
