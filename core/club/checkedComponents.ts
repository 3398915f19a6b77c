import { inRange } from "../quantity/inRange.ts";
import { listOf } from "../quantity/listOf.ts";
import type { ClubComponent } from "./clubComponent.ts";

const MOST_PARTS = 100;
const HEAVIEST_PART_G = 2000;
const FARTHEST_MM = 2000;
const FARTHEST_OFF_AXIS_MM = 200;
const MOST_OWN_INERTIA_KG_CM2 = 1000;

function checked(part: ClubComponent): void {
  const { name } = part;
  inRange(part.massG, { field: `${name} massG`, unit: "g", min: 0, max: HEAVIEST_PART_G });
  inRange(part.fromCapMm, { field: `${name} fromCapMm`, unit: "mm", min: 0, max: FARTHEST_MM });
  inRange(part.fromAxisMm ?? 0, { field: `${name} fromAxisMm`, unit: "mm", min: 0, max: FARTHEST_OFF_AXIS_MM });
  inRange(part.ownInertiaKgCm2 ?? 0, { field: `${name} ownInertiaKgCm2`, unit: "kg·cm²", min: 0, max: MOST_OWN_INERTIA_KG_CM2 });
}

/** The parts of a club, or of one without its head, each with a possible mass and place. */
export function checkedComponents<C extends ClubComponent>(parts: readonly C[]): readonly C[] {
  listOf(parts, { field: "components", min: 0, max: MOST_PARTS }).forEach(checked);
  return parts;
}
