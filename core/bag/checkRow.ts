import { inRange } from "../quantity/inRange.ts";
import { oneOf } from "../quantity/oneOf.ts";
import { type CheckedQuantity, type CheckTolerances, type ComparedQuantity, comparedQuantities } from "./checkTolerances.ts";
import { clubBounds } from "./clubBounds.ts";
import { combinedGaugeError } from "./combinedGaugeError.ts";
import { defaultGaugeErrors, type GaugeErrors } from "./gaugeErrors.ts";

export type Verdict = "same" | "close" | "off";

/** One quantity wished and measured, in its own unit. */
export interface CheckRow<Q extends ComparedQuantity = CheckedQuantity> {
  readonly quantity: Q;
  readonly wanted: number;
  readonly got: number;
  /** got − wanted */
  readonly delta: number;
  /** Below it the gauge cannot tell the two apart. */
  readonly gaugeError: number;
  readonly tolerance: number;
  readonly verdict: Verdict;
  /** Past the second, wider limit. */
  readonly flagged: boolean;
  readonly concerns: "feel" | "conformity";
}

/** How the numbers were come by: against a written value (one reading) or against another club (two). */
interface Reading {
  readonly readings: 1 | 2;
  readonly errors: GaugeErrors;
}

const ONE_READING: Reading = { readings: 1, errors: defaultGaugeErrors };
const SLACK = 1e-9;

/** Every number of both tables, used by this row or not. */
function checkTables(tolerances: CheckTolerances, errors: GaugeErrors): void {
  for (const quantity of comparedQuantities) {
    inRange(tolerances[quantity].tolerance, { field: `${quantity} tolerance`, unit: "", min: 0 });
    inRange(tolerances[quantity].flag ?? 0, { field: `${quantity} flag`, unit: "", min: 0 });
    inRange(errors[quantity].error, { field: `${quantity} gauge error`, unit: "", min: 0 });
  }
}

/**
 * One quantity held against what was wanted.
 *
 *     same: |got − wanted| ≤ e·√n     close: ≤ tolerance     off: past it
 *
 * Same is what the gauge, reading n times to ±e, cannot tell apart; what is past the tolerance is off even where the
 * gauge is the coarser of the two. Tolerances and most gauge errors are common practice with no source.
 *
 * @param quantity - which one; its name ends in the unit of all that follows
 * @param wanted - written, planned, or read off the other club
 * @param got - read off this club
 * @param tolerances - how far is close, what is flagged, what each concerns
 * @param gauge - one reading (the default) or two, and the error of one of each quantity
 * @returns the difference and its verdict, in the unit of the quantity
 * @throws {DomainError} `quantity-out-of-range` when a reading can be no club's or a tolerance or an error is negative
 * @throws {DomainError} `quantity-unreadable` when no such quantity is compared
 * @see fixtures/published/gaugeError.json
 */
export function checkRow<Q extends ComparedQuantity>(
  quantity: Q,
  wanted: number,
  got: number,
  tolerances: CheckTolerances,
  gauge: Reading = ONE_READING,
): CheckRow<Q> {
  checkTables(tolerances, gauge.errors);
  const { tolerance, flag, concerns } = tolerances[oneOf(quantity, comparedQuantities, "quantity")];
  const bounds = clubBounds[quantity];
  const delta = inRange(got, { ...bounds, field: quantity }) - inRange(wanted, { ...bounds, field: `wanted ${quantity}` });
  const away = Math.abs(delta) - SLACK;
  const gaugeError = combinedGaugeError(gauge.errors[quantity].error, gauge.readings);
  const verdict = away > tolerance ? "off" : away <= gaugeError ? "same" : "close";
  return { quantity, wanted, got, delta, gaugeError, tolerance, verdict, flagged: flag !== null && away > flag, concerns };
}

/** The worst of several verdicts; null when there is none. */
export function worstVerdict(rows: readonly { readonly verdict: Verdict }[]): Verdict | null {
  const found = new Set(rows.map(({ verdict }) => verdict));
  return (["off", "close", "same"] as const).find((verdict) => found.has(verdict)) ?? null;
}
