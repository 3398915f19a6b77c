import type { Json } from "../../chat/types.ts";
import { type BendFacts, partsOf } from "./bendFacts.ts";

/** Every number of a bend, before and after; null where nobody told the reading before it. */
export function bendData(facts: BendFacts): { readonly [key: string]: Json } {
  const { answer, allowance, loftDeg, lieDeg, bounceDeg } = facts;
  const { bend, after } = partsOf(facts);
  const afterDeg = (fromDeg: number | null, deg: number): number | null => (fromDeg === null ? null : deg);
  const { limits, kind, reasons, totalLoftDeg, totalLieDeg } = allowance;
  return {
    answer: answer.kind,
    squaredLoftBeforeDeg: loftDeg,
    squaredLoftDeg: afterDeg(loftDeg, after.squaredLoftDeg),
    loftChangeDeg: bend.loftChangeDeg,
    bounceBeforeDeg: bounceDeg,
    bounceDeg: afterDeg(bounceDeg, after.bounceDeg),
    bounceChangeDeg: bend.loftChangeDeg,
    seatedLieBeforeDeg: lieDeg,
    seatedLieDeg: afterDeg(lieDeg, after.seatedLieDeg),
    lieChangeDeg: bend.lieChangeDeg,
    offsetMm: after.offsetMm,
    offsetChangeMm: after.offsetChangeMm,
    toeLiftMm: after.toeLiftMm,
    allowed: kind,
    reasons: reasons.map((reason) => ({ ...reason })),
    warnAboveDeg: limits.warnAboveDeg,
    blockAboveDeg: limits.blockAboveDeg,
    totalLoftDeg,
    totalLieDeg,
    wantedBounceDeg: answer.kind === "refused" ? answer.wantedBounceDeg : null,
    bounceMissDeg: answer.kind === "refused" ? answer.bounceMissDeg : null,
    loftAtWantedBounceDeg: answer.kind === "refused" && loftDeg !== null ? answer.loftAtWantedBounceDeg : null,
  };
}
