import { inRange } from "../quantity/inRange.ts";
import { type Millimetres, millimetres } from "../quantity/units.ts";
import { checkedComponents } from "./checkedComponents.ts";
import type { BareHeadMass, HeadCentre, StagedComponent } from "./clubParts.ts";
import { headCentreUpShaft } from "./headCentreUpShaft.ts";

/**
 * Where the centre of a head lies along the shaft, from the end of the cap.
 *
 *     x = L − s,   s = (z − d·cos lie) / sin lie unless told
 *
 * Exact for a rigid head; L by the 60° plane may differ by some mm from the point where the axis meets the ground.
 *
 * @param playingLength - L in mm, 400 to 1500
 * @param centre - d off the axis in mm, and s up the shaft, or height z in mm and lie in degrees to find s
 * @returns mm
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible
 * @see fixtures/published/headCentreUpShaft.json
 */
export function headFromCap(playingLength: Millimetres, centre: HeadCentre): Millimetres {
  const lengthMm = inRange(playingLength, { field: "playingLengthMm", unit: "mm", min: 400, max: 1500 });
  inRange(centre.fromAxisMm, { field: "headFromAxisMm", unit: "mm", min: 0, max: 200 });
  const upShaftMm = "upShaftMm" in centre ? centre.upShaftMm : headCentreUpShaft(centre.heightMm, centre.fromAxisMm, centre.soledLieDeg);
  return millimetres(lengthMm - inRange(upShaftMm, { field: "headCentreUpShaftMm", unit: "mm", min: -200, max: 200 }));
}

/**
 * A head as a component of a club: at its centre along the shaft and off it.
 *
 *     x = L − s
 *
 * Exact for a rigid head at a known place; the club's inertia counts m·d² as well as the head's own.
 *
 * @param head - mass in g, inertia about its own centre in kg·cm²
 * @param playingLength - L in mm, 400 to 1500
 * @param centre - d off the axis in mm, and s up the shaft, or height in mm and lie in degrees to find s
 * @returns the component, places in mm from the end of the cap
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible
 * @see fixtures/published/workedSet.json
 */
export function headComponent(head: BareHeadMass, playingLength: Millimetres, centre: HeadCentre): StagedComponent {
  const component = {
    name: "head",
    stage: "ready" as const,
    massG: head.massG,
    fromCapMm: headFromCap(playingLength, centre),
    fromAxisMm: centre.fromAxisMm,
    ownInertiaKgCm2: head.ownInertiaKgCm2,
  };
  checkedComponents([component]);
  return component;
}
