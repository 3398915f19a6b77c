import { chooseHeads, type HeadQuestion } from "../selection/chooseHeads.ts";
import { givenUp } from "../selection/givenUp.ts";
import { headShortage } from "./headShortage.ts";
import type { SleeveModel } from "./parts.ts";
import type { ClubPlan, HeadChoice, Shortage } from "./plan.ts";
import type { PlanQuestion } from "./planQuestion.ts";
import { remediesFor } from "./remediesFor.ts";

const RUNNERS_UP_SHOWN = 5;
const ELSEWHERE_SHOWN = 3;

/** The head of a plan, and all there is to say of other heads. */
export type ChosenHead = Pick<ClubPlan, "choice" | "runnersUp" | "elsewhere" | "remedies">;

export type RankedHeads = ({ readonly kind: "ranked" } & ChosenHead) | { readonly kind: "short"; readonly shortage: Shortage };

/** Heads fit, but no sleeve of their family is at hand. */
function sleeveShortage(question: PlanQuestion, sleeves: readonly SleeveModel[]): Shortage | null {
  const { target, parts } = question;
  const families = new Set(
    parts.heads.flatMap(({ here, hand, model }) =>
      here && hand === target.hand && model.name === target.headModel && model.sleeveFamily !== null ? [model.sleeveFamily] : [],
    ),
  );
  const lacking = [...families].filter((family) => !sleeves.some((sleeve) => sleeve.family === family)).sort();
  const [wanted] = lacking;
  return wanted === undefined || lacking.length < families.size ? null : { part: "sleeve", wanted, nearest: [] };
}

/** The heads that do not lie here and are nearer by at least a band of scores. */
function nearerElsewhere(ranked: readonly HeadChoice[], choice: HeadChoice, scoreBand: number): readonly HeadChoice[] {
  return ranked.filter(({ head, score }) => !head.here && score <= choice.score - scoreBand + 1e-9).slice(0, ELSEWHERE_SHOWN);
}

/** How the heads of a question are set and weighed. */
export type HeadsHow = Pick<HeadQuestion, "sleeves" | "preferredMark" | "massWish">;

/**
 * The heads in this truck, best first, the one allotted before all; or what is short, with the nearest in reach. What
 * does not lie here, another player's bin included, is named and never taken.
 */
export function rankHeads(question: PlanQuestion, how: HeadsHow): RankedHeads {
  const { target, parts, tolerances, allottedHead = null, skilledTechnician = false, runnersUpWanted = RUNNERS_UP_SHOWN } = question;
  const asked: HeadQuestion = { target, heads: parts.heads, tolerances, skilledTechnician, ...how };
  const ranked = chooseHeads(asked);
  const here = ranked.filter(({ head }) => head.here);
  const choice = here.find(({ head }) => head.id === allottedHead) ?? here[0];
  if (choice === undefined) {
    return { kind: "short", shortage: sleeveShortage(question, how.sleeves) ?? headShortage(target, parts.heads) };
  }
  const others = here.filter((other) => other !== choice).slice(0, runnersUpWanted);
  return {
    kind: "ranked",
    choice,
    runnersUp: others.map((other) => ({ ...other, givesUp: givenUp(choice, other) })),
    elsewhere: nearerElsewhere(ranked, choice, tolerances.scoreBand),
    remedies: remediesFor(asked, choice),
  };
}
