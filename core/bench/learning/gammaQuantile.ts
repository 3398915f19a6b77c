import { normalQuantile } from "../standardNormal.ts";

/** From here on Stirling's series is good to 1e-13. */
const STIRLING_FROM = 15;

/** ln Γ(a), a above 0: Stirling's series, reached by ln Γ(a) = ln Γ(a + 1) − ln a. */
function logGamma(a: number): number {
  let below = 0;
  let at = a;
  for (; at < STIRLING_FROM; at++) below += Math.log(at);
  const square = at * at;
  return (
    (at - 0.5) * Math.log(at) -
    at +
    0.5 * Math.log(2 * Math.PI) +
    (1 / 12 - (1 / 360 - (1 / 1260 - 1 / (1680 * square)) / square) / square) / at -
    below
  );
}

/** Share of the gamma distribution below x over x times its density there: 1/a · (1 + x/(a+1) + x²/((a+1)(a+2)) + …). */
function shareOverDensity(shape: number, x: number): number {
  let term = 1 / shape;
  let sum = term;
  for (let n = 1; term > 1e-16 * sum; n++) {
    term *= x / (shape + n);
    sum += term;
  }
  return sum;
}

/** Above this shape the first guess is good to 1e-6 and is taken as it is. */
const NEARLY_NORMAL = 10_000;
const MOST_STEPS = 30;

/** Wilson and Hilferty: the cube root of a gamma variate is nearly normal; far below the mean, the first term of the series. */
function firstGuess(shape: number, u: number, logGammaOfShape: number): number {
  const variance = 1 / (9 * shape);
  const root = 1 - variance + normalQuantile(u) * Math.sqrt(variance);
  return root > 0.3 ? shape * root ** 3 : Math.exp((Math.log(u * shape) + logGammaOfShape) / shape);
}

/**
 * The value a gamma variate of scale 1 stays below with probability u.
 *
 * Newton's steps on ln P(a, x) over ln x, from Wilson and Hilferty's guess: relative error below 1e-8 for shapes from 1 to 10,000
 * and u from 1e-9 to 1 − 1e-6, 1e-5 up to 1 − 1e-9; above that shape the guess itself, good to 1e-6.
 *
 * @param shape - a, at least 1
 * @param u - probability, above 0 and below 1
 * @see fixtures/published/chiSquareQuantiles.json
 */
export function gammaQuantile(shape: number, u: number): number {
  const logGammaOfShape = shape > NEARLY_NORMAL ? 0 : logGamma(shape);
  let x = firstGuess(shape, u, logGammaOfShape);
  if (shape > NEARLY_NORMAL) return x;
  for (let step = 0; step < MOST_STEPS; step++) {
    const ratio = shareOverDensity(shape, x);
    const logShare = shape * Math.log(x) - x - logGammaOfShape + Math.log(ratio);
    const change = (Math.log(u) - logShare) * ratio;
    x *= Math.exp(Math.max(-1, Math.min(1, change)));
    if (Math.abs(change) < 1e-10) break;
  }
  return x;
}
