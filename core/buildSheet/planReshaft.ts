import { atBestSettings } from "../selection/atBestSettings.ts";
import { headOnRecord } from "./headOnRecord.ts";
import type { PlanResult } from "./plan.ts";
import { planFromParts } from "./planFromParts.ts";
import type { PlanQuestion } from "./planQuestion.ts";
import type { HeadsHow, RankedHeads } from "./rankHeads.ts";
import { remediesFor } from "./remediesFor.ts";
import { sleevesOnRecord } from "./sleevesOnRecord.ts";

/** The club's own head, its sleeve at the mark written or else as played; no other head is looked for. */
function ownHeadSet(question: PlanQuestion, massWish: HeadsHow["massWish"]): RankedHeads {
  const { target, tolerances, reference, ownHead = null, skilledTechnician = false } = question;
  if (ownHead === null) {
    return { kind: "short", shortage: { part: "head", wanted: target.headModel ?? target.club, nearest: [] } };
  }
  const { sleeves, onRecord } = sleevesOnRecord(question);
  const head = headOnRecord(ownHead, reference, onRecord);
  const played = onRecord?.marks.find(({ mark }) => mark === reference?.sleeveMark)?.mark ?? null;
  const isSleeved = head.model.sleeveFamily !== null;
  /** What is stamped on it is no wish any more. */
  const wished = { ...target, stampedLoftDeg: null, sleeveMark: isSleeved ? (target.sleeveMark ?? played) : null };
  const how = { target: wished, sleeves, tolerances, skilledTechnician, preferredMark: played, ...(massWish === undefined ? {} : { massWish }) };
  const [choice] = atBestSettings([head], how);
  return choice === undefined
    ? { kind: "short", shortage: { part: "sleeve", wanted: reference?.sleeveModel ?? head.model.sleeveFamily ?? "", nearest: [] } }
    : { kind: "ranked", choice, runnersUp: [], elsewhere: [], remedies: remediesFor({ ...how, heads: [] }, choice) };
}

const differs = (wished: number | null, known: number | null) => wished !== null && (known === null || Math.abs(wished - known) > 1e-6);

/**
 * Another shaft in a club as it stands: its head and sleeve come back at the mark they were played at, with the weights
 * that are on them; more is added only when another swing weight or head mass is wished than the record has.
 */
export function planReshaft(question: PlanQuestion): PlanResult {
  const { target, reference } = question;
  const kept = {
    ...question,
    target: { ...target, lengthMm: target.lengthMm ?? reference?.lengthMm ?? null, grip: target.grip ?? reference?.gripModel ?? null },
  };
  const addsMass = differs(target.swingWeightPoints, reference?.swingWeightPoints ?? null) || differs(target.headMassG, reference?.headMassG ?? null);
  return planFromParts(kept, { rank: (massWish) => ownHeadSet(kept, addsMass ? massWish : undefined), addsMass });
}
