import type { SpecClub } from "../bag/specClub.ts";
import { turnedMark } from "../head/turnedMark.ts";
import type { ClubFamily, ClubName, Hand } from "../kinds.ts";
import { finiteNumbers } from "../quantity/finiteNumbers.ts";
import { inRange } from "../quantity/inRange.ts";
import type { Amount, BuildRequest, Clauses, Wish } from "./buildRequest.ts";
import { keptFromReference } from "./keptFromReference.ts";
import type { SleeveModel } from "./parts.ts";
import type { Target } from "./plan.ts";
import { changesFrom } from "./targetChanges.ts";
import { type AmountName, amountNames, targetLimits } from "./targetLimits.ts";

/** A clause that could not become a value: it leans on something unknown, or what comes out is no such club. */
export type TargetFault =
  | { readonly code: "needs-reference"; readonly quantity: AmountName | "sleeve" }
  | { readonly code: "out-of-range"; readonly quantity: AmountName; readonly value: number; readonly min: number; readonly max: number };

interface ResolvedTarget {
  readonly target: Target;
  /** Names of the target's quantities that differ from the club it is like. */
  readonly changes: readonly string[];
  readonly faults: readonly TargetFault[];
}

interface TargetQuestion {
  readonly request: Pick<BuildRequest, "clauses">;
  readonly club: ClubName;
  readonly hand: Hand;
  /** The club named after `like`, or the one a head is swapped on; null when there is none. */
  readonly reference: SpecClub | null;
  readonly family: ClubFamily;
  /** Known sleeves, to count marks on a turn. */
  readonly sleeves?: readonly SleeveModel[];
}

function amountOf(wish: Wish<Amount> | undefined, known: number | null): number | null {
  if (wish === undefined) {
    return null;
  }
  if (wish.value.kind === "exactly") {
    return wish.value.value;
  }
  if (known === null) {
    return null;
  }
  return wish.value.kind === "by" ? known + wish.value.value : known;
}

function amountFaults(clauses: Clauses, reference: SpecClub | null, amounts: Readonly<Record<AmountName, number | null>>): readonly TargetFault[] {
  return amountNames.flatMap((quantity): readonly TargetFault[] => {
    const wish = clauses[quantity];
    if (wish !== undefined && wish.value.kind !== "exactly" && (reference?.[quantity] ?? null) === null) {
      return [{ code: "needs-reference", quantity }];
    }
    const value = amounts[quantity];
    const { min, max } = targetLimits[quantity];
    return value !== null && !(value >= min && value <= max) ? [{ code: "out-of-range", quantity, value, min, max }] : [];
  });
}

function sleeveMarkOf(question: TargetQuestion): string | null {
  const wish = question.request.clauses.sleeve?.value;
  if (wish === undefined || wish.kind === "mark") {
    return wish?.mark ?? null;
  }
  const { reference } = question;
  const sleeve = question.sleeves?.find(({ name }) => name === reference?.sleeveModel);
  return sleeve === undefined ? null : turnedMark(sleeve, reference?.sleeveMark ?? sleeve.standardMark, wish.marks);
}

/** Amounts read from the clauses; where nothing was written, from the reference as far as it is kept. */
function resolvedAmounts(clauses: Clauses, reference: SpecClub | null, keeps: ReadonlySet<string>): Record<AmountName, number | null> {
  const entries = amountNames.map((name) => {
    const known = reference?.[name] ?? null;
    return [name, clauses[name] === undefined ? (keeps.has(name) ? known : null) : amountOf(clauses[name], known)] as const;
  });
  return Object.fromEntries(entries) as Record<AmountName, number | null>;
}

/**
 * What a club should measure: every clause as a value, and what was not written from the club it is like.
 *
 *     by: reference + amount      same: reference      not written: reference, where it still makes sense
 *
 * @param question - the request, the club, the hand, the reference, and the sleeves whose marks a turn counts
 * @returns the target, the names of what differs from the reference, and every clause that leans on something unknown
 *   or leads outside what a club can be
 * @throws {DomainError} `quantity-out-of-range` when a number is not finite or a stamp is no loft
 */
export function resolveTarget(question: TargetQuestion): ResolvedTarget {
  finiteNumbers(question, "question");
  const { reference, family, club, hand } = question;
  const { clauses } = question.request;
  inRange(clauses.stampedLoftDeg?.value ?? 0, { field: "stampedLoftDeg", unit: "deg", ...targetLimits.squaredLoftDeg });
  const keeps = keptFromReference(clauses, reference, family);
  const kept = <T>(name: string, value: T | null | undefined): T | null => (keeps.has(name) ? (value ?? null) : null);
  const amounts = resolvedAmounts(clauses, reference, keeps);
  const sleeveMark = sleeveMarkOf(question);
  const rib = clauses.rib?.value;
  const target: Target = {
    club,
    hand,
    ...amounts,
    headModel: clauses.headModel?.value ?? kept("headModel", reference?.headModel),
    stampedLoftDeg: clauses.stampedLoftDeg?.value ?? kept("stampedLoftDeg", reference?.stampedLoftDeg),
    grind: clauses.grind?.value ?? kept("grind", reference?.grind),
    shaft: clauses.shaft?.value ?? kept("shaft", reference?.shaftModel),
    logo: clauses.logo?.value ?? kept("logo", reference?.logo),
    sleeveMark,
    grip: clauses.grip?.value ?? kept("grip", reference?.gripModel),
    rib: rib === undefined ? kept("rib", reference?.rib) : rib === "rib",
  };
  const turnUnknown = clauses.sleeve !== undefined && sleeveMark === null;
  return {
    target,
    changes: reference === null ? [] : changesFrom(reference, target),
    faults: [
      ...amountFaults(clauses, reference, amounts),
      ...(turnUnknown ? [{ code: "needs-reference" as const, quantity: "sleeve" as const }] : []),
    ],
  };
}
