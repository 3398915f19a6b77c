import type { ClubPlan } from "../../core/buildSheet/plan.ts";
import type { ClubFacts } from "../operations/orderFacts.ts";
import { bendWords } from "./bendWords.ts";
import { shown } from "./shown.ts";

/** Less lead than this is what the scale cannot tell. */
export const LEAST_LEAD_G = 0.25;

/** What is set by hand and cannot be seen once the glue has set. */
export function orientationWords({ grip, logo }: ClubPlan): string {
  const rib = grip === null ? "" : grip.model.rib ? ", rib in line" : ", no rib";
  return `logo ${logo ?? "as played: ask"}${rib}`;
}

/** Setting and orientation in one line. */
export const settingWords = (plan: ClubPlan): string => `Sleeve ${plan.choice.mark ?? "none, bonded"}; ${orientationWords(plan)}`;

/** How the dry swing weight is read. */
export const dryWords = "head on, no grip or tape";

/** Nearer than a saw cuts. */
const SAME_TRIM_MM = 1.6;

/** How much comes off the tip; of a prepared shaft what is still to come off. */
export function tipWords({ tipTrimMm, piece }: Pick<ClubPlan, "tipTrimMm" | "piece">, length: (mm: number) => string): string {
  if (tipTrimMm === null || tipTrimMm === 0) {
    return "none";
  }
  if (piece === null) {
    return length(tipTrimMm);
  }
  const leftMm = tipTrimMm - piece.tipTrimMm;
  return leftMm <= SAME_TRIM_MM ? `${length(tipTrimMm)}, done already` : `${length(leftMm)} more, ${length(tipTrimMm)} in all`;
}

/** A head by its serial, where it lies and how it is bent. */
export const headWords = ({ headShown }: ClubFacts, { choice: { head, ...bent } }: ClubPlan, mass = `, ${shown.mass(head.massG)}`): string =>
  `${head.serial} ${headShown ?? ""}, ${head.place}${mass}${bendWords(bent)}`;

/** A place as the technician knows it; the player's own bin needs no name. */
const placeWords = (place: string, player: string | null): string => (place === `bin ${player}` ? "own bin" : place);

/** @param player - whose own bin is called so; null calls every place by its name */
export const shaftWords = ({ model, place }: NonNullable<ClubPlan["shaft"]>, piece: ClubPlan["piece"], player: string | null = null): string =>
  `${model.name}${piece === null ? "" : `, ${piece.state} already`}, ${placeWords(place, player)}`;

export const gripWords = ({ model, place }: NonNullable<ClubPlan["grip"]>, wraps: number, player: string | null = null): string =>
  `${model.name}${wraps > 0 ? `, ${wraps} more under it` : ""}, ${placeWords(place, player)}`;

export const weightWords = ({ model, count }: ClubPlan["weights"][number]): string => `${count} × ${model.name}`;

export const leadWords = (leadG: number): string => `${shown.mass(leadG)} on the head`;
