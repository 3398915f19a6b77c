import type { ClubPlan, Deviation, GivenUp, Remedy } from "../../core/buildSheet/plan.ts";
import type { BendReason } from "../../core/head/bendAllowed.ts";
import type { Line } from "../chat/types.ts";
import { bendChangeWords } from "./bendWords.ts";
import { line } from "./card.ts";
import { quantityWords } from "./faultWords.ts";
import { plural, shown } from "./shown.ts";

const unitOf: Readonly<Partial<Record<Deviation["quantity"], string>>> = { headMassG: " g", swingWeightPoints: " points" };

function amount(quantity: Deviation["quantity"], by: number): string {
  return `${quantityWords[quantity] ?? quantity} ${shown.angle(Math.abs(by))}${unitOf[quantity] ?? "°"}`;
}

function givenUpWord(given: GivenUp): string {
  switch (given.code) {
    case "further":
      return `${amount(given.quantity, given.worseBy)} further off`;
    case "bounce-unknown":
      return "bounce never measured";
    case "turned-sleeve":
      return `turned to ${given.mark}`;
    case "more-bend":
      return `${shown.angle(given.deg)}° more bend`;
    case "more-weights":
      return `${plural(given.count, "weight")} more`;
    case "elsewhere":
      return `lies in ${given.place}`;
  }
}

/** What one head gives up against another. */
export const givenUpWords = (givesUp: readonly GivenUp[]): string =>
  givesUp.length === 0 ? "gives up nothing the gauge can tell" : givesUp.map(givenUpWord).join(", ");

function reasonWords(reason: BendReason): string {
  switch (reason.code) {
    case "past-limit":
    case "past-warning":
      return `${reason.plane} bends end at ${shown.angle(reason.limitDeg)}°, all bends together`;
    case "maker-does-not-allow":
      return "its maker does not say how far it may be bent";
    case "needs-skill":
      return "only a technician with the skill for bonded heads bends it";
  }
}

function remedyWords(remedy: Remedy): string {
  switch (remedy.code) {
    case "head-elsewhere":
      return `Head ${remedy.serial} is nearer: ${remedy.place}`;
    case "order-head":
      return `Order from home base: ${remedy.model} stamped ${shown.stamp(remedy.stampedLoftDeg)}`;
    case "another-grind":
      return `Another grind has it: ${remedy.model} ${remedy.serial}, ${remedy.place}, bounce ${shown.angle(remedy.bounceDeg)} at ${shown.angle(remedy.squaredLoftDeg)}${remedy.bend === null ? "" : `, bent ${bendChangeWords(remedy.bend)}`}`;
    case "sole-work":
      return `Sole work by a qualified grinder: ${shown.angle(Math.abs(remedy.bounceChangeDeg))}° ${remedy.bounceChangeDeg < 0 ? "less" : "more"} bounce`;
    case "loft-for-bounce":
      return `By bending, bounce ${shown.angle(remedy.bounceDeg)} comes at loft ${shown.angle(remedy.squaredLoftDeg)}`;
    case "no-further-bend":
      return `Not bent further: ${reasonWords(remedy.reason)}`;
  }
}

/** What a plan misses in the end: a head too light for itself is made up with lead. */
const missesOf = ({ choice, leadG }: ClubPlan): readonly Deviation[] =>
  choice.misses.filter(({ quantity }) => quantity !== "headMassG" || leadG === 0);

/** The same in a few words. */
export const missWords = (plan: ClubPlan): readonly string[] =>
  missesOf(plan).map((miss) => `misses ${amount(miss.quantity, miss.got - miss.wanted)}`);

/** What the nearest head misses, and what would mend it. */
export function headRemedies(plan: ClubPlan): readonly Line[] {
  const words = missWords(plan);
  if (plan.kind === "reshaft") {
    return words.map((text) => line(`As it stands it ${text}: write the swing weight, and a screw or lead makes it up`));
  }
  return words.length === 0 ? [] : [...words.map((text) => line(`Nearest ${text}`)), ...plan.remedies.map((remedy) => line(remedyWords(remedy)))];
}
