import { inRange } from "../quantity/inRange.ts";
import { type Degrees, degrees, type Millimetres, millimetres } from "../quantity/units.ts";
import { angleInRange } from "./angleLimits.ts";
import { radians } from "./radians.ts";

/** A head as the loft and lie gauge reads it before it is bent. */
export interface BendableHead {
  readonly squaredLoftDeg: Degrees;
  readonly seatedLieDeg: Degrees;
  readonly bounceDeg: Degrees;
  /** Front of the hosel ahead of the leading edge. */
  readonly offsetMm?: Millimetres | null;
  /** From the leading edge up to where the hosel bends: 45 to 65 mm on most irons. */
  readonly bendPointHeightMm?: Millimetres | null;
}

/** How far the hosel is moved in each plane. */
export interface Bend {
  /** Weaker positive, stronger negative. */
  readonly loftChangeDeg: Degrees;
  /** Upright positive, flat negative. */
  readonly lieChangeDeg: Degrees;
}

/** A head as the gauge will read it after a bend. */
export interface BentHead {
  readonly squaredLoftDeg: Degrees;
  readonly seatedLieDeg: Degrees;
  readonly bounceDeg: Degrees;
  /** More offset positive; null where the height of the bend is not known. */
  readonly offsetChangeMm: Millimetres | null;
  /** Null where the offset before, or the change of it, is not known. */
  readonly offsetMm: Millimetres | null;
  /** How far the toe end of the sole comes up when the shaft is held where it was: toe positive, heel negative. */
  readonly toeLiftMm: Millimetres;
}

/** Length of sole over which the lift of the toe or the heel is told. */
const LIFT_SPAN_MM = 50;
const bounceLimits = { unit: "deg", min: -10, max: 30 };

export function checkedBend(bend: Bend): Bend {
  inRange(bend.loftChangeDeg, { field: "loftChangeDeg", unit: "deg", min: -10, max: 10 });
  inRange(bend.lieChangeDeg, { field: "lieChangeDeg", unit: "deg", min: -10, max: 10 });
  return bend;
}

function checkedHead(head: BendableHead): BendableHead {
  angleInRange(head.squaredLoftDeg, "loft", "squaredLoftDeg");
  angleInRange(head.seatedLieDeg, "lie", "seatedLieDeg");
  inRange(head.bounceDeg, { ...bounceLimits, field: "bounceDeg" });
  inRange(head.offsetMm ?? 0, { field: "offsetMm", unit: "mm", min: -50, max: 50 });
  inRange(head.bendPointHeightMm ?? 0, { field: "bendPointHeightMm", unit: "mm", min: 0, max: 150 });
  return head;
}

/**
 * What a head reads after its hosel is bent.
 *
 *     loft' = l + d     bounce' = b + d     lie' = L + e     Δoffset = −h·tan d     toe lift = 50 mm · sin e
 *
 * Loft and bounce are exact: face and sole turn together about the heel-toe line, so bending never parts them. Each
 * plane is bent by itself, and both readings are taken again on the gauge: a loft bend of 2° that is not brought
 * back in lie leaves it about 0.07° flat. Stronger is more offset and less bounce, weaker less offset and more bounce.
 * The offset needs the height of the bend to some 5 mm: 10 mm of height is 0.17 mm a degree.
 *
 * @param head - squared loft l, seated lie L and bounce b in degrees; offset and height h of the bend in mm, where known
 * @param bend - change of loft d (weaker positive) and of lie e (upright positive) in degrees
 * @returns squared loft, seated lie and bounce in degrees; offset, its change and the lift of the toe in mm
 * @throws {DomainError} `quantity-out-of-range` when an angle or a length is impossible, before the bend or after
 * @see fixtures/published/bending.json
 */
export function afterBend(head: BendableHead, bend: Bend): BentHead {
  const { squaredLoftDeg, seatedLieDeg, bounceDeg, offsetMm = null, bendPointHeightMm = null } = checkedHead(head);
  const { loftChangeDeg, lieChangeDeg } = checkedBend(bend);
  const offsetChangeMm = bendPointHeightMm === null ? null : 0 - bendPointHeightMm * Math.tan(radians(loftChangeDeg));
  return {
    squaredLoftDeg: degrees(angleInRange(squaredLoftDeg + loftChangeDeg, "loft", "squaredLoftDeg after")),
    seatedLieDeg: degrees(angleInRange(seatedLieDeg + lieChangeDeg, "lie", "seatedLieDeg after")),
    bounceDeg: degrees(inRange(bounceDeg + loftChangeDeg, { ...bounceLimits, field: "bounceDeg after" })),
    offsetChangeMm: offsetChangeMm === null ? null : millimetres(offsetChangeMm),
    offsetMm: offsetMm === null || offsetChangeMm === null ? null : millimetres(offsetMm + offsetChangeMm),
    toeLiftMm: millimetres(LIFT_SPAN_MM * Math.sin(radians(lieChangeDeg))),
  };
}
