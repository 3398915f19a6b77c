import { assembledClub } from "../club/assembledClub.ts";
import type { StagedComponent } from "./stagedComponents.ts";

interface DryTargets {
  readonly beforeGluePoints: number;
  readonly dryTargetPoints: number;
}

/**
 * What the scale should read before the grip is on, so that the finished club comes out right.
 *
 * Without a grip the butt of the shaft stands against the stop of the scale, so every place is nearer by the
 * thickness of the cap: on a driver 1/8 in of cap is about 0.7 of a point. The dry target has ferrule and glue but no
 * tape and grip; before glue it has neither.
 *
 * @param components - the finished club, places in mm from the end of the cap
 * @param capMm - thickness of the grip cap in mm
 * @returns both readings in points, D0 = 0
 * @throws {DomainError} `quantity-out-of-range` when a mass or a place is impossible
 */
export function dryTargets(components: readonly StagedComponent[], capMm: number): DryTargets {
  const withoutGrip = components.filter(({ stage }) => stage !== "grip").map((part) => ({ ...part, fromCapMm: part.fromCapMm - capMm }));
  return {
    beforeGluePoints: assembledClub(withoutGrip.filter(({ stage }) => stage === "ready")).swingWeightPoints,
    dryTargetPoints: assembledClub(withoutGrip).swingWeightPoints,
  };
}
