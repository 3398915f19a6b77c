import type { Bend } from "../head/afterBend.ts";
import { type BendAllowance, bendAllowed } from "../head/bendAllowed.ts";
import { usuallyMade } from "../head/usuallyMade.ts";
import { type ClubFamily, clubFamily } from "../kinds.ts";
import { type Degrees, degrees } from "../quantity/units.ts";
import type { ServiceFault, ServiceQuestion } from "./servicePlan.ts";

/** How far each plane is bent; null where the gauge must say first where the head stands. */
export interface KnownBend {
  readonly loftChangeDeg: Degrees | null;
  readonly lieChangeDeg: Degrees | null;
}

/** No head is asked farther at once: past it a number was mistyped. */
const FARTHEST_DEG = 10;
/** Stands for a bend not known yet: where this is refused, any bend is. */
const ANY_BEND_DEG = 0.01;

export const bendFamily = (question: ServiceQuestion): ClubFamily => clubFamily(question.club) ?? "iron";

const bendWith = ({ loftChangeDeg, lieChangeDeg }: KnownBend, unknown: number): Bend => ({
  loftChangeDeg: loftChangeDeg ?? degrees(unknown),
  lieChangeDeg: lieChangeDeg ?? degrees(unknown),
});

/** Whether the head bears a bend, as its model says or else as its kind of club is usually made. */
function allowed(question: ServiceQuestion, bend: Bend): BendAllowance {
  const { head, bends, skilledTechnician } = question;
  const usual = usuallyMade[head?.family ?? bendFamily(question)];
  const made = { material: head?.material ?? usual.material, construction: head?.construction ?? usual.construction };
  return bendAllowed({ ...made, history: bends, makerLimitDeg: head?.makerBendLimitDeg ?? null, skilledTechnician }, bend);
}

/** Of the bend as far as it is known. */
export const allowanceOf = (question: ServiceQuestion, bend: KnownBend): BendAllowance => allowed(question, bendWith(bend, 0));

/** A plane asked farther than a bend is ever made: mistyped, and past any head's limit. */
export function faultsOfReach(question: ServiceQuestion, { loftChangeDeg, lieChangeDeg }: KnownBend): readonly ServiceFault[] {
  const { totalLoftDeg, totalLieDeg, limits } = allowed(question, { loftChangeDeg: degrees(0), lieChangeDeg: degrees(0) });
  const planes = [
    ["loft", loftChangeDeg, totalLoftDeg],
    ["lie", lieChangeDeg, totalLieDeg],
  ] as const;
  const limitDeg = degrees(Math.min(limits.blockAboveDeg, FARTHEST_DEG));
  return planes.flatMap(([plane, changeDeg, soFarDeg]): readonly ServiceFault[] => {
    const farDeg = Math.abs(changeDeg ?? 0);
    return farDeg <= FARTHEST_DEG ? [] : [{ code: "bend-blocked", plane, totalDeg: degrees(soFarDeg + farDeg), limitDeg }];
  });
}

/** Why the head may not be bent so; where a bend is not known yet, why it may not be bent at all. */
export function faultsOfAllowance(question: ServiceQuestion, bend: KnownBend): readonly ServiceFault[] {
  return allowed(question, bendWith(bend, ANY_BEND_DEG)).reasons.flatMap((reason): readonly ServiceFault[] => {
    switch (reason.code) {
      case "past-limit":
        return [{ code: "bend-blocked", plane: reason.plane, totalDeg: reason.totalDeg, limitDeg: reason.limitDeg }];
      case "past-warning":
        return [];
      default:
        return [{ code: reason.code, family: bendFamily(question) }];
    }
  });
}
