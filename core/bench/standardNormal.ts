/** Rational approximations of the quantile: numerator and denominator, highest power first. */
const CENTRE = {
  over: [
    2509.0809287301227, 33430.57558358813, 67265.7709270087, 45921.95393154987, 13731.69376550946, 1971.5909503065513, 133.14166789178438,
    3.3871328727963665,
  ],
  under: [5226.495278852546, 28729.085735721943, 39307.89580009271, 21213.794301586597, 5394.196021424751, 687.1870074920579, 42.31333070160091, 1],
};
const SHOULDER = {
  over: [
    0.0007745450142783414, 0.022723844989269184, 0.2417807251774506, 1.2704582524523684, 3.6478483247632045, 5.769497221460691, 4.630337846156546,
    1.4234371107496835,
  ],
  under: [
    1.0507500716444169e-9, 0.0005475938084995345, 0.015198666563616457, 0.14810397642748008, 0.6897673349851, 1.6763848301838038, 2.053191626637759,
    1,
  ],
};
const TAIL = {
  over: [
    2.0103343992922881e-7, 2.7115555687434876e-5, 0.0012426609473880784, 0.026532189526576124, 0.29656057182850487, 1.7848265399172913,
    5.463784911164114, 6.657904643501103,
  ],
  under: [
    2.0442631033899397e-15, 1.421511758316446e-7, 1.8463183175100548e-5, 0.0007868691311456133, 0.014875361290850615, 0.1369298809227358,
    0.599832206555888, 1,
  ],
};

function ratio(coefficients: { readonly over: readonly number[]; readonly under: readonly number[] }, r: number): number {
  let over = 0;
  let under = 0;
  for (const c of coefficients.over) over = over * r + c;
  for (const c of coefficients.under) under = under * r + c;
  return over / under;
}

/**
 * The value a standard normal variate stays below with probability p.
 *
 * Rational approximations, relative accuracy about 1e-16 for 1e-300 < p < 1 − 1e-16.
 *
 * @param p - probability, above 0 and below 1
 * @returns z in standard deviations
 * @see Wichura, Algorithm AS 241, Applied Statistics 37 (1988)
 */
export function normalQuantile(p: number): number {
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) return q * ratio(CENTRE, 0.180625 - q * q);
  const r = Math.sqrt(-Math.log(q < 0 ? p : 1 - p));
  const z = r <= 5 ? ratio(SHOULDER, r - 1.6) : ratio(TAIL, r - 5);
  return q < 0 ? -z : z;
}

/**
 * Probability that a standard normal variate exceeds z.
 *
 *     z < 3: 1/2 − φ(z)·(z + z³/3 + z⁵/(3·5) + …);   z ≥ 3: φ(z) / (z + 1/(z + 2/(z + 3/(z + …))))
 *
 * Relative accuracy better than 1e-12 from z = −37 to z = 37.
 *
 * @param z - in standard deviations
 * @see Marsaglia, Evaluating the Normal Distribution, Journal of Statistical Software 11 (2004)
 */
export function normalUpperTail(z: number): number {
  if (z < 0) return 1 - normalUpperTail(-z);
  const density = Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
  if (z >= 3) {
    let fraction = z;
    for (let depth = 100; depth >= 1; depth--) fraction = z + depth / fraction;
    return density / fraction;
  }
  let term = z;
  let sum = z;
  for (let odd = 3; odd < 120; odd += 2) {
    term *= (z * z) / odd;
    sum += term;
  }
  return 0.5 - density * sum;
}

/** Beyond it the tail is smaller than the smallest double. */
const FARTHEST = 37;

/**
 * A standard normal variate known to lie above a bound, from one uniform number.
 *
 *     z = −Φ⁻¹( u · (1 − Φ(bound)) )
 *
 * @param above - the bound in standard deviations; −∞ when nothing is known
 * @param u - uniform, above 0 and below 1; a larger u gives a smaller z
 */
export function normalAbove(above: number, u: number): number {
  if (above === Number.NEGATIVE_INFINITY) return -normalQuantile(u);
  return Math.max(above, -normalQuantile(u * normalUpperTail(Math.min(above, FARTHEST))));
}
