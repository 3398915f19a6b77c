/** What is at hand when a step is done, as far as it can hurt. */
export const workMaterials = ["graphite", "steel", "titanium", "magnesium", "epoxy", "gripSolvent", "lead"] as const;
export type WorkMaterial = (typeof workMaterials)[number];

/** A number that goes with a caution. */
export interface CautionNumber {
  readonly quantity: string;
  readonly value: number;
  readonly unit: string;
  readonly bound: "atMost" | "atLeast" | "near";
}

/** Where a caution stands. `opened` when the page itself was seen; false where only a page that quotes or reports it was. */
export interface CautionSource {
  readonly title: string;
  readonly address: string;
  readonly opened: boolean;
}

/** A hazard, met when all of `needs` are at hand. The words are the replies'. */
export interface Caution {
  readonly needs: readonly WorkMaterial[];
  readonly numbers: readonly CautionNumber[];
  /** Null is common practice, no source. */
  readonly source: CautionSource | null;
}
