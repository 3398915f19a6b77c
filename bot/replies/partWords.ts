import type { ClubPlan } from "../../core/buildSheet/plan.ts";
import type { ClubFacts } from "../operations/orderFacts.ts";
import { bendWords } from "./bendWords.ts";
import { shown } from "./shown.ts";

/** Less lead than this is what the scale cannot tell. */
export const LEAST_LEAD_G = 0.25;

/** What is set by hand and cannot be seen once the glue has set. */
export function orientationWords({ grip, logo }: ClubPlan): string {
  const rib = grip === null ? "" : grip.model.rib ? ", rib in line" : ", no rib";
  return `logo ${logo ?? "as he plays it: ask"}${rib}`;
}

/** Setting and orientation in one line. */
export const settingWords = (plan: ClubPlan): string => `Sleeve ${plan.choice.mark ?? "none, bonded"}; ${orientationWords(plan)}`;

/** How the dry swing weight is read. */
export const dryWords = "head on, no grip or tape";

export const tipWords = (tipTrimMm: number): string => (tipTrimMm > 0 ? shown.both(tipTrimMm) : "none");

export const headWords = ({ headShown }: ClubFacts, { choice }: ClubPlan): string =>
  `${choice.head.serial} ${headShown ?? ""}, ${choice.head.place}, ${shown.mass(choice.head.massG)}${bendWords(choice)}`;

export const shaftWords = ({ model, place }: NonNullable<ClubPlan["shaft"]>, piece: ClubPlan["piece"]): string =>
  `${model.name}${piece === null ? "" : `, ${piece.state} already`}, ${place}`;

export const gripWords = ({ model, place }: NonNullable<ClubPlan["grip"]>, wraps: number): string =>
  `${model.name}${wraps > 0 ? `, ${wraps} more under it` : ""}, ${place}`;

export const weightWords = ({ model, count }: ClubPlan["weights"][number]): string => `${count} × ${model.name}`;

export const leadWords = (leadG: number): string => `${shown.mass(leadG)} left over`;
