import type { Skill } from "../../core/bench/benchTypes.ts";
import type { Lacking } from "../operations/lackingAt.ts";

const skillAsked: Readonly<Record<Skill, string>> = { grinding: "may grind", woodBending: "may bend a bonded wood", stamping: "stamps" };

/** Why no promise can be given whatever the time; null when it is for another reason. */
export function lackingWords([first]: readonly Lacking[]): string | null {
  if (first === undefined) {
    return null;
  }
  return first === "anybody"
    ? "No promise: nobody is at this bench before the truck leaves (/shift on)"
    : `No promise: nobody here ${skillAsked[first]}`;
}
