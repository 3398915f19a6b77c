import { bignumber, det } from "mathjs";

/** A cantilever in SI units, clamp at x = 0, tip at x = L; EI and λ even between the two. */
export interface Beam {
  readonly lengthM: number;
  readonly stiffness: readonly [atClamp: number, atTip: number];
  readonly density: readonly [atClamp: number, atTip: number];
  readonly tipMassKg: number;
  readonly beyondM: number;
  readonly inertiaKgM2: number;
}

type State = readonly [w: number, slope: number, moment: number, shear: number];

/** ∫₀¹ (p + (q − p)·s)·sⁿ ds */
const integral = ([p, q]: readonly [number, number], n: number) => p / (n + 1) + (q - p) / (n + 2);

/**
 * Whether a frequency lies below (positive) or above (negative) the first by Ritz's method: deflection as a polynomial x²,
 * x³ … of the free length, stiffness and mass integrated term by term, the determinant by the library in 64 digits.
 */
export function ritzSign(beam: Beam, omega: number, terms = 8): number {
  const { lengthM: L, tipMassKg: M, beyondM: e, inertiaKgM2: J } = beam;
  const powers = Array.from({ length: terms }, (_, index) => index + 2);
  const centre = (n: number) => 1 + (n * e) / L;
  const stiffness = (i: number, j: number) => (i * (i - 1) * j * (j - 1) * integral(beam.stiffness, i + j - 4)) / L ** 3;
  const mass = (i: number, j: number) => integral(beam.density, i + j) * L + M * centre(i) * centre(j) + (J * i * j) / L ** 2;
  const rows = powers.map((i) => powers.map((j) => bignumber(stiffness(i, j) - omega ** 2 * mass(i, j))));
  return Math.sign(Number(det(rows as never)));
}

const plus = (state: State, slope: State, h: number): State => [
  state[0] + h * slope[0],
  state[1] + h * slope[1],
  state[2] + h * slope[2],
  state[3] + h * slope[3],
];

/** What is left of the head's balance of moment and of force, after Runge–Kutta from a clamp that holds so much moment and shear. */
function leftAtTip(beam: Beam, omega: number, start: State, steps: number): readonly [number, number] {
  const h = beam.lengthM / steps;
  const at = ([clamp, tip]: readonly [number, number], x: number) => clamp + ((tip - clamp) * x) / beam.lengthM;
  const slope = (x: number, [w, turn, moment, shear]: State): State => [
    turn,
    moment / at(beam.stiffness, x),
    shear,
    omega ** 2 * at(beam.density, x) * w,
  ];
  const step = (state: State, x: number): State => {
    const k1 = slope(x, state);
    const k2 = slope(x + h / 2, plus(state, k1, h / 2));
    const k3 = slope(x + h / 2, plus(state, k2, h / 2));
    const k4 = slope(x + h, plus(state, k3, h));
    return plus(plus(plus(plus(state, k1, h / 6), k2, h / 3), k3, h / 3), k4, h / 6);
  };
  const [w, turn, moment, shear] = Array.from({ length: steps }, (_, index) => index * h).reduce(step, start);
  const force = omega ** 2 * beam.tipMassKg * (w + beam.beyondM * turn);
  return [moment - force * beam.beyondM - omega ** 2 * beam.inertiaKgM2 * turn, shear + force];
}

/** Whether a frequency lies below (positive) or above (negative) the first, by shooting from the clamp with unit moment and unit shear. */
export function shootingSign(beam: Beam, omega: number, steps = 400): number {
  const [a, b] = leftAtTip(beam, omega, [0, 0, 1, 0], steps);
  const [c, d] = leftAtTip(beam, omega, [0, 0, 0, 1], steps);
  return Math.sign(
    det([
      [a, c],
      [b, d],
    ]),
  );
}
