import { inRange } from "../quantity/inRange.ts";
import { type Degrees, degrees } from "../quantity/units.ts";
import { afterBend, type Bend, type BendableHead, type BentHead } from "./afterBend.ts";
import { angleInRange } from "./angleLimits.ts";

/** What the head should read; what is left out may come as it comes, but an unwished loft stays. */
interface BendWish {
  readonly squaredLoftDeg?: Degrees | null;
  readonly seatedLieDeg?: Degrees | null;
  readonly bounceDeg?: Degrees | null;
}

interface BendAndResult {
  readonly bend: Bend;
  readonly after: BentHead;
}

/** The bend that meets a wish, or what of it no bend can meet. */
export type BendForAnswer =
  | ({ readonly kind: "bend" } & BendAndResult)
  | {
      readonly kind: "refused";
      readonly why: "bounce-goes-with-loft";
      /** Bounce without loft is taken or given by metal, not by the bending machine, and by a qualified grinder. */
      readonly remedy: "another-grind-or-sole-work";
      /** The bend that meets everything but the bounce. */
      readonly nearest: BendAndResult;
      readonly wantedBounceDeg: Degrees;
      /** Wanted less what the nearest bend leaves: negative is bounce to take off. */
      readonly bounceMissDeg: Degrees;
      /** The loft at which bending alone would give the wanted bounce. */
      readonly loftAtWantedBounceDeg: Degrees;
    };

/** Angles nearer than this are one angle: rounding of the machine's numbers, far below any gauge. */
const SLACK_DEG = 1e-9;

const checkedWish = (wish: BendWish): BendWish => {
  angleInRange(wish.squaredLoftDeg ?? 0, "loft", "wished squaredLoftDeg");
  angleInRange(wish.seatedLieDeg ?? 60, "lie", "wished seatedLieDeg");
  inRange(wish.bounceDeg ?? 0, { field: "wished bounceDeg", unit: "deg", min: -10, max: 30 });
  return wish;
};

/**
 * The bend that gives a head its wished loft, lie and bounce, or what of the wish bending cannot meet.
 *
 *     d = l_wish − l     e = L_wish − L     met when b + d = b_wish
 *
 * Exact, as `afterBend` is. Whether the metal bears the bend is for `bendAllowed` to say.
 *
 * @param head - as the gauge reads it, in degrees
 * @param wish - wished squared loft, seated lie and bounce in degrees, each where wished; without a wished loft the loft stays
 * @returns the bend and the head after it; or, where bounce is wished alone or apart from the loft, a refusal with the nearest bend
 * @throws {DomainError} `quantity-out-of-range` when an angle is impossible or more than 10° away
 * @see fixtures/published/bending.json
 */
export function bendFor(head: BendableHead, wish: BendWish): BendForAnswer {
  const { squaredLoftDeg, seatedLieDeg, bounceDeg } = checkedWish(wish);
  const bend = {
    loftChangeDeg: degrees((squaredLoftDeg ?? head.squaredLoftDeg) - head.squaredLoftDeg),
    lieChangeDeg: degrees((seatedLieDeg ?? head.seatedLieDeg) - head.seatedLieDeg),
  };
  const after = afterBend(head, bend);
  const wantedBounceDeg = bounceDeg ?? after.bounceDeg;
  const missDeg = wantedBounceDeg - after.bounceDeg;
  if (Math.abs(missDeg) <= SLACK_DEG) {
    return { kind: "bend", bend, after };
  }
  return {
    kind: "refused",
    why: "bounce-goes-with-loft",
    remedy: "another-grind-or-sole-work",
    nearest: { bend, after },
    wantedBounceDeg,
    bounceMissDeg: degrees(missDeg),
    loftAtWantedBounceDeg: degrees(head.squaredLoftDeg + wantedBounceDeg - head.bounceDeg),
  };
}
