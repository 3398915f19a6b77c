import { inRange } from "../quantity/inRange.ts";
import { listOf } from "../quantity/listOf.ts";
import { oneOf } from "../quantity/oneOf.ts";
import { type Degrees, degrees } from "../quantity/units.ts";
import { type Bend, checkedBend } from "./afterBend.ts";
import {
  type BendLimit,
  type BendLimits,
  defaultBendLimits,
  type HeadConstruction,
  type HeadMaterial,
  headConstructions,
  headMaterials,
} from "./bendLimits.ts";

type Plane = "loft" | "lie";

/** One head, what it is made of and what was done to it. */
interface HeadToBend {
  readonly material: HeadMaterial;
  readonly construction: HeadConstruction;
  /** Every bend the head has had, there and back: each one hardens the hosel. */
  readonly history: readonly Bend[];
  /** How far its maker lets this model be bent in all; left out or null, the maker has said nothing. */
  readonly makerLimitDeg?: Degrees | null;
  /** Whether the technician has the skill for bonded heads. */
  readonly skilledTechnician: boolean;
}

/** Why a bend is warned of or blocked. */
export type BendReason =
  | { readonly code: "past-warning" | "past-limit"; readonly plane: Plane; readonly totalDeg: Degrees; readonly limitDeg: Degrees }
  | { readonly code: "maker-does-not-allow" }
  | { readonly code: "needs-skill" };

export interface BendAllowance {
  readonly kind: "allowed" | "warned" | "blocked";
  readonly reasons: readonly BendReason[];
  /** The narrowest of material, construction and maker. */
  readonly limits: BendLimit;
  /** All bends of the head so far and this one, without their signs. */
  readonly totalLoftDeg: Degrees;
  readonly totalLieDeg: Degrees;
}

/** Sums of tenths of a degree do not add up to the last digit. */
const SLACK_DEG = 1e-9;
const FARTHEST_DEG = 20;

function narrowest(head: HeadToBend, limits: BendLimits): BendLimit {
  const [byMaterial, byConstruction] = [
    limits.byMaterial[oneOf(head.material, headMaterials, "material")],
    limits.byConstruction[oneOf(head.construction, headConstructions, "construction")],
  ];
  const makerDeg = inRange(head.makerLimitDeg ?? FARTHEST_DEG, { field: "makerLimitDeg", unit: "deg", min: 0, max: FARTHEST_DEG });
  const blockAboveDeg = Math.min(byMaterial.blockAboveDeg, byConstruction.blockAboveDeg, makerDeg);
  return {
    warnAboveDeg: degrees(Math.min(byMaterial.warnAboveDeg, byConstruction.warnAboveDeg, blockAboveDeg)),
    blockAboveDeg: degrees(blockAboveDeg),
    onlyIfMakerAllows: byMaterial.onlyIfMakerAllows || byConstruction.onlyIfMakerAllows,
    needsSkill: byMaterial.needsSkill || byConstruction.needsSkill,
  };
}

function checkedLimits(limits: BendLimits): BendLimits {
  for (const { warnAboveDeg, blockAboveDeg } of [...Object.values(limits.byMaterial), ...Object.values(limits.byConstruction)]) {
    inRange(warnAboveDeg, { field: "warnAboveDeg", unit: "deg", min: 0, max: FARTHEST_DEG });
    inRange(blockAboveDeg, { field: "blockAboveDeg", unit: "deg", min: 0, max: FARTHEST_DEG });
  }
  return limits;
}

/** What one plane has to say: nothing where it is not bent this time, however much it was before. */
function planeReasons(plane: Plane, changeDeg: Degrees, totalDeg: Degrees, limits: BendLimit): readonly BendReason[] {
  if (changeDeg === 0) {
    return [];
  }
  if (totalDeg > limits.blockAboveDeg + SLACK_DEG) {
    return [{ code: "past-limit", plane, totalDeg, limitDeg: limits.blockAboveDeg }];
  }
  return totalDeg > limits.warnAboveDeg + SLACK_DEG ? [{ code: "past-warning", plane, totalDeg, limitDeg: limits.warnAboveDeg }] : [];
}

/**
 * Whether a head bears one more bend, with all that it was bent before.
 *
 *     total in a plane = Σ |past bends| + |this bend|     warned past the warning, blocked past the limit
 *
 * Metal hardens with every bend, so a bend there and back counts twice. A rule of the shop and not a law: sources
 * differ by 2 to 3° for one material, a cold head and a short hosel bear less. It says nothing of cracks: look first.
 *
 * @param head - material, construction, bends so far, the maker's limit where there is one, the technician's skill
 * @param wish - change of loft (weaker positive) and of lie (upright positive) in degrees
 * @param limits - by material and construction, in degrees; the narrower one applies
 * @returns allowed, warned or blocked, with every reason, the limits that apply and the totals in degrees
 * @throws {DomainError} `quantity-out-of-range` when an angle is impossible
 * @throws {DomainError} `quantity-unreadable` when the material or the construction is not known
 * @throws {DomainError} `list-of-wrong-size` when the history has more than 200 bends
 * @see fixtures/published/bendLimits.json
 */
export function bendAllowed(head: HeadToBend, wish: Bend, limits: BendLimits = defaultBendLimits): BendAllowance {
  const apply = narrowest(head, checkedLimits(limits));
  const bends = [...listOf(head.history, { field: "history", min: 0, max: 200 }), wish].map(checkedBend);
  const total = (of: (bend: Bend) => number) => degrees(bends.reduce((sum, bend) => sum + Math.abs(of(bend)), 0));
  const [totalLoftDeg, totalLieDeg] = [total((bend) => bend.loftChangeDeg), total((bend) => bend.lieChangeDeg)];
  const bent = wish.loftChangeDeg !== 0 || wish.lieChangeDeg !== 0;
  const makerIsSilent = (head.makerLimitDeg ?? 0) === 0;
  const reasons: readonly BendReason[] = [
    ...(bent && apply.onlyIfMakerAllows && makerIsSilent ? [{ code: "maker-does-not-allow" } as const] : []),
    ...(bent && apply.needsSkill && !head.skilledTechnician ? [{ code: "needs-skill" } as const] : []),
    ...planeReasons("loft", wish.loftChangeDeg, totalLoftDeg, apply),
    ...planeReasons("lie", wish.lieChangeDeg, totalLieDeg, apply),
  ];
  const blocked = reasons.some(({ code }) => code !== "past-warning");
  return { kind: blocked ? "blocked" : reasons.length > 0 ? "warned" : "allowed", reasons, limits: apply, totalLoftDeg, totalLieDeg };
}
