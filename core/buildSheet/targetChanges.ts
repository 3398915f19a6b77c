import type { SpecClub } from "../bag/specClub.ts";
import type { Target } from "./plan.ts";
import { amountNames } from "./targetLimits.ts";

const differs = (one: number, other: number) => Math.abs(one - other) > 1e-6;

/** The names of the target's quantities that are known on both sides and differ. */
export function changesFrom(reference: SpecClub, target: Target): readonly string[] {
  const numbers = [...amountNames, "stampedLoftDeg" as const].filter((name) => {
    const [wanted, known] = [target[name], reference[name]];
    return wanted !== null && known !== null && differs(wanted, known);
  });
  const others = [
    ["headModel", target.headModel, reference.headModel],
    ["grind", target.grind, reference.grind],
    ["shaft", target.shaft, reference.shaftModel],
    ["logo", target.logo, reference.logo],
    ["sleeveMark", target.sleeveMark, reference.sleeveMark],
    ["grip", target.grip, reference.gripModel],
    ["rib", target.rib, reference.rib],
  ] as const;
  return [...numbers, ...others.flatMap(([name, wanted, known]) => (wanted !== null && known !== null && wanted !== known ? [name] : []))];
}
