/** What each broken rule tells about itself. A new code without words in `bot/replies` fails to compile. */
export interface Facts {
  "quantity-out-of-range": { readonly field: string; readonly value: number; readonly unit: string; readonly min?: number; readonly max?: number };
  "quantity-unreadable": { readonly field: string; readonly written: string; readonly accepted: string };
  "list-of-wrong-size": { readonly field: string; readonly count: number; readonly min: number; readonly max: number };
  "shaft-too-short": { readonly rawMm: number; readonly neededMm: number };
  "tip-section-too-short": { readonly wantedTrimMm: number; readonly allowedTrimMm: number };
  "taper-not-tip-trimmed": { readonly wantedTrimMm: number };
  "balance-outside-model": { readonly balanceFromTipMm: number; readonly minMm: number; readonly maxMm: number };
  "route-has-a-cycle": { readonly steps: readonly string[] };
  "person-unknown": { readonly name: string };
  "order-unknown": { readonly written: string };
  "order-in-wrong-state": { readonly number: number; readonly state: string; readonly wanted: string; readonly action: string };
  "not-reserved": { readonly serial: string };
}

/** A broken rule, by code and facts; the wording lives in `bot/replies`. */
export class DomainError<C extends keyof Facts = keyof Facts> extends Error {
  readonly code: C;
  readonly facts: Facts[C];
  constructor(code: C, facts: Facts[C]) {
    super(`${code} ${JSON.stringify(facts)}`);
    this.name = "DomainError";
    this.code = code;
    this.facts = facts;
  }
}
