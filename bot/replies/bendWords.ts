import type { HeadChoice } from "../../core/buildSheet/plan.ts";
import type { Bend } from "../../core/head/afterBend.ts";
import { shown } from "./shown.ts";

/** `0.5 weak, 1.0 flat`. */
export function bendChangeWords({ loftChangeDeg: loft, lieChangeDeg: lie }: Bend): string {
  const parts = [
    ...(loft === 0 ? [] : [`${shown.angle(Math.abs(loft))} ${loft > 0 ? "weak" : "strong"}`]),
    ...(lie === 0 ? [] : [`${shown.angle(Math.abs(lie))} ${lie > 0 ? "upright" : "flat"}`]),
  ];
  return parts.join(", ");
}

/** `, bent 0.5 weak, 1.0 flat`; nothing for a head that is left as it is. */
export function bendWords({ bend, bendWarned }: Pick<HeadChoice, "bend" | "bendWarned">): string {
  return bend === null ? "" : `, bent ${bendChangeWords(bend)}${bendWarned ? " (far: look for cracks)" : ""}`;
}
