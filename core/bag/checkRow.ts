import type { CheckedQuantity, CheckTolerances } from "./checkTolerances.ts";

export type Verdict = "same" | "close" | "off";

/** One quantity wished and measured. */
export interface CheckRow {
  readonly quantity: CheckedQuantity;
  readonly wanted: number;
  readonly got: number;
  /** got − wanted */
  readonly delta: number;
  readonly tolerance: number;
  readonly verdict: Verdict;
  /** Past the second, wider limit. */
  readonly flagged: boolean;
  readonly concerns: "feel" | "conformity";
}

const SLACK = 1e-9;

/** Same within half the tolerance (what the gauges hold), close within it, off past it. */
export function checkRow(quantity: CheckedQuantity, wanted: number, got: number, tolerances: CheckTolerances): CheckRow {
  const { tolerance, flag, concerns } = tolerances[quantity];
  const delta = got - wanted;
  const away = Math.abs(delta) - SLACK;
  const verdict = away <= tolerance / 2 ? "same" : away <= tolerance ? "close" : "off";
  return { quantity, wanted, got, delta, tolerance, verdict, flagged: flag !== null && away > flag, concerns };
}

/** The worst of several verdicts; null when there is none. */
export function worstVerdict(rows: readonly CheckRow[]): Verdict | null {
  const found = new Set(rows.map(({ verdict }) => verdict));
  return (["off", "close", "same"] as const).find((verdict) => found.has(verdict)) ?? null;
}
