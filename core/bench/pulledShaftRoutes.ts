import type { StepKind } from "./benchTypes.ts";
import { adjustableBuild, bondedWoodBuild, ironBuild, putterBuild } from "./buildRoutes.ts";
import type { RouteRow } from "./routeRows.ts";
import { withoutKinds } from "./routeRows.ts";

/** Pulling a shaft: 8 minutes and 5 to cool before the part is used again; common practice, no source. */
export const pulling: readonly RouteRow[] = [
  { kind: "removeOld", min: 8, after: [] },
  { kind: "coolDown", min: 5, after: ["removeOld"], wait: {} },
];

/** A build on a head or sleeve that has to come off its old shaft first. */
function onPulledPart(build: readonly RouteRow[], firstUse: readonly StepKind[]): readonly RouteRow[] {
  const rows = withoutKinds(build, ["pullHead"]);
  return [...pulling, ...rows.map((row) => (firstUse.includes(row.kind) ? { ...row, after: [...row.after, "coolDown" as const] } : row))];
}

/** The sleeve is pulled off the old shaft and bonded to the new one. */
export const adjustableReshaft: readonly RouteRow[] = onPulledPart(adjustableBuild, ["dryFit"]);
export const bondedWoodReshaft: readonly RouteRow[] = onPulledPart(bondedWoodBuild, ["gaugeHead", "dryFit"]);
export const ironReshaft: readonly RouteRow[] = onPulledPart(ironBuild, ["gaugeHead"]);
export const putterReshaft: readonly RouteRow[] = onPulledPart(putterBuild, ["gaugeHead", "dryFit"]);

/** The new head goes on the shaft as it is: nothing is cut or gripped. */
const keptShaft: readonly StepKind[] = ["pullParts", "cut", "layOutGrip", "grip", "gripSet"];
const swapped = (build: readonly RouteRow[], firstUse: StepKind): readonly RouteRow[] => [
  ...pulling,
  ...withoutKinds(build, keptShaft).map((row) => (row.kind === firstUse ? { ...row, after: [...row.after, "coolDown" as const] } : row)),
];

export const bondedWoodSwap: readonly RouteRow[] = swapped(bondedWoodBuild, "tipPrepare");
export const ironSwap: readonly RouteRow[] = swapped(ironBuild, "tipPrepare");
export const putterSwap: readonly RouteRow[] = swapped(putterBuild, "tipPrepare");
