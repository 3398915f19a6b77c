import type { ClubFamily } from "../kinds.ts";
import type { Observation } from "./clubFacts.ts";
import type { RuleQuantity } from "./ruleQuantities.ts";

/** Model Local Rules that count only where the committee has adopted them. */
export const localRules = ["G-1", "G-2", "G-10"] as const;
export type LocalRule = (typeof localRules)[number];

/** Where a number stands. `opened` when the body's own text was seen; false where only a page that quotes or reports it was. */
export interface RuleSource {
  readonly title: string;
  readonly address: string;
  readonly edition: string;
  readonly opened: boolean;
}

interface Basis<Code extends string> {
  readonly code: Code;
  readonly families: readonly ClubFamily[];
  readonly rule: string;
  readonly source: RuleSource;
  /** What of the row was written from memory and has yet to be seen on a page. */
  readonly fromMemory?: "limit" | "tolerance";
  readonly localRule?: LocalRule;
  /** Asked only of clubs of which this is known to be true. */
  readonly onlyIf?: Observation;
  /** Not asked of clubs of which this is known to be true. */
  readonly unless?: Observation;
}

/** A limit on a number. A bound itself conforms, unless `exclusive`. */
export interface LimitRule<Code extends string = string> extends Basis<Code> {
  readonly quantity: RuleQuantity;
  readonly unit: string;
  readonly min?: number;
  readonly max?: number;
  readonly exclusive?: true;
  /** The ruling bodies' test tolerance: theirs in ruling, never an allowance in building. */
  readonly tolerance?: number;
  /** Asked only of clubs with a loft within these, both included. */
  readonly loftDeg?: { readonly min?: number; readonly max?: number };
}

/** Something that must be so, or must not. */
export interface YesNoRule<Code extends string = string> extends Basis<Code> {
  readonly observation: Observation;
  readonly mustBe: boolean;
}

export const allClubs: readonly ClubFamily[] = ["driver", "fairway", "hybrid", "iron", "wedge", "putter"];
export const notPutters: readonly ClubFamily[] = ["driver", "fairway", "hybrid", "iron", "wedge"];
/** A hybrid is judged by its shape; the limits for woods are far above any that is shaped like an iron. */
export const woods: readonly ClubFamily[] = ["driver", "fairway", "hybrid"];
export const putters: readonly ClubFamily[] = ["putter"];
