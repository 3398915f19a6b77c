import { defaultAllowances } from "../../core/buildSheet/allowances.ts";
import type { PartsInReach, Stocked } from "../../core/buildSheet/parts.ts";
import type { ClubPlan } from "../../core/buildSheet/plan.ts";
import { planClub } from "../../core/buildSheet/planClub.ts";
import type { SelectionTolerances } from "../../core/selection/selectionTolerances.ts";
import { headsInOthersBins } from "../../db/repositories/heads.ts";
import type { Reader } from "../../db/write.ts";
import type { HeadAsked } from "./planWanted.ts";
import type { RivalSheet } from "./rivalSheets.ts";

/** A part the sheet has already is the one there is of its kind. */
function kept<M>(part: { readonly model: M; readonly place: string; readonly placeId: Stocked<M>["placeId"] | null } | null): readonly Stocked<M>[] {
  return part === null || part.placeId === null
    ? []
    : [{ model: part.model, place: part.place, placeId: part.placeId, inPlayersBin: false, free: 1 }];
}

/** What a rival chooses from: any head in play that is in nobody else's bin; shaft and grip stay as its sheet has them. */
function partsOfRival(reader: Reader, { order, plan }: RivalSheet, inPlay: PartsInReach): PartsInReach {
  const inOthersBins = headsInOthersBins(reader, order.playerId);
  return {
    ...inPlay,
    heads: inPlay.heads.filter(({ id }) => !inOthersBins.has(id)),
    shafts: plan.piece === null ? kept(plan.shaft) : [],
    pieces: plan.piece === null ? [] : [plan.piece],
    grips: kept(plan.grip),
  };
}

/**
 * Plans a rival's club again with another head: shaft and grip stay.
 *
 * @param inPlay - the heads, sleeves and weights to choose from, what confirmed rivals hold among them
 * @returns null when no plan can be made of these any more
 */
export function planRival(
  reader: Reader,
  rival: RivalSheet,
  { tolerances, inPlay }: { readonly tolerances: SelectionTolerances; readonly inPlay: PartsInReach },
  head: HeadAsked,
): ClubPlan | null {
  const { sheet, plan, forGamer } = rival;
  const result = planClub({
    target: plan.target,
    kind: plan.kind,
    reference: sheet.sheetPlan.reference ?? null,
    ...head,
    forGamer,
    parts: partsOfRival(reader, rival, inPlay),
    allowances: defaultAllowances,
    tolerances,
  });
  return result.kind === "planned" ? result.plan : null;
}
