import type { SpecClub } from "../bag/specClub.ts";
import type { ClubFamily } from "../kinds.ts";
import type { Clauses } from "./buildRequest.ts";
import type { Target } from "./plan.ts";

type Kept = Exclude<keyof Target, "club" | "hand" | "sleeveMark">;

const clausesThatMoveMass = ["headModel", "lengthMm", "swingWeightPoints", "totalMassG", "headMassG", "shaft", "tipTrimMm", "grip", "wraps"] as const;

/** Whether a clause is written and says something else than the reference has. */
function replaces<T>(wish: { readonly value: T } | undefined, known: T | null): boolean {
  return wish !== undefined && wish.value !== known;
}

/**
 * What a club takes over from the one it is like, where nothing was written.
 *
 * A head of another maker is not in any drawer: its model is not taken over, its loft is. A written stamp or sleeve
 * mark frees the loft, a written loft frees the stamp. Where the mark is written, face and lie follow from it. The mark
 * itself is never taken over: it is a means to the loft, and standard comes first. A wedge copies its grind, not the
 * bounce a worn sole reads; another grind that is written frees the model. A tip trim goes with its shaft, a rib with its grip; masses hold only while nothing moves
 * mass, and a wished swing weight decides over the head mass.
 */
export function keptFromReference(clauses: Clauses, reference: SpecClub | null, family: ClubFamily): ReadonlySet<string> {
  if (reference === null) {
    return new Set();
  }
  const otherHead = reference.outside || replaces(clauses.headModel, reference.headModel);
  const markWritten = clauses.sleeve !== undefined;
  const massMoves = otherHead || clausesThatMoveMass.some((name) => clauses[name] !== undefined);
  const swingWeightKnown = clauses.swingWeightPoints !== undefined || reference.swingWeightPoints !== null;
  const rules: Readonly<Record<Kept, boolean>> = {
    headModel: !reference.outside && !replaces(clauses.grind, reference.grind),
    stampedLoftDeg: clauses.squaredLoftDeg === undefined && (!otherHead || reference.squaredLoftDeg === null),
    squaredLoftDeg: !markWritten && !replaces(clauses.stampedLoftDeg, reference.stampedLoftDeg),
    soledFaceDeg: !markWritten,
    seatedLieDeg: !markWritten,
    bounceDeg: !otherHead && !(family === "wedge" && (reference.grind !== null || clauses.grind !== undefined)),
    grind: !otherHead,
    lengthMm: true,
    swingWeightPoints: clauses.headMassG === undefined,
    totalMassG: !massMoves,
    headMassG: !massMoves && !swingWeightKnown,
    shaft: true,
    tipTrimMm: !replaces(clauses.shaft, reference.shaftModel),
    logo: true,
    grip: true,
    rib: !replaces(clauses.grip, reference.gripModel),
    wraps: true,
  };
  return new Set(Object.entries(rules).flatMap(([name, keeps]) => (keeps ? [name] : [])));
}
