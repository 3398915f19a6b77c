import { inRange } from "../quantity/inRange.ts";
import { type Millimetres, millimetres, type SwingWeightPoints } from "../quantity/units.ts";
import { assembledClub } from "./assembledClub.ts";
import { checkedComponents } from "./checkedComponents.ts";
import type { StagedComponent } from "./clubParts.ts";

interface DryTargets {
  readonly beforeGluePoints: SwingWeightPoints;
  readonly dryTargetPoints: SwingWeightPoints;
}

/**
 * What the scale should read before the grip is on, so that the finished club comes out right.
 *
 *     S = Σ m·(x − cap − 14 in) over the parts that are on
 *
 * Without a grip the butt of the shaft stands against the stop of the scale, so every place is nearer by the
 * thickness of the cap: on a driver 1/8 in of cap is about 0.7 of a point. The dry target has ferrule and glue but no
 * tape, grip or butt weight; before glue it has neither. Exact for the sums; a scale agrees to 0.3 points.
 *
 * @param components - the finished club, places in mm from the end of the cap
 * @param cap - thickness of the grip cap in mm, 0 to 50
 * @returns both readings in points, D0 = 0
 * @throws {DomainError} `quantity-out-of-range` when a mass or a place is impossible
 * @throws {DomainError} `list-of-wrong-size` past 100 parts
 * @see fixtures/published/dryReadings.json
 */
export function dryTargets(components: readonly StagedComponent[], cap: Millimetres): DryTargets {
  const capMm = inRange(cap, { field: "capMm", unit: "mm", min: 0, max: 50 });
  const withoutGrip = checkedComponents(components)
    .filter(({ stage }) => stage !== "grip")
    .map((part) => ({ ...part, fromCapMm: millimetres(part.fromCapMm - capMm) }));
  return {
    beforeGluePoints: assembledClub(withoutGrip.filter(({ stage }) => stage === "ready")).swingWeightPoints,
    dryTargetPoints: assembledClub(withoutGrip).swingWeightPoints,
  };
}
