import { chooseHeads, type HeadQuestion } from "../selection/chooseHeads.ts";
import { headShortage } from "./headShortage.ts";
import type { SleeveModel } from "./parts.ts";
import type { HeadChoice, Shortage } from "./plan.ts";
import type { PlanQuestion } from "./planQuestion.ts";

const RUNNERS_UP_SHOWN = 5;

type RankedHeads =
  | { readonly kind: "ranked"; readonly choice: HeadChoice; readonly runnersUp: readonly HeadChoice[] }
  | { readonly kind: "short"; readonly shortage: Shortage };

/** The choices after the first, each head once at its best mark. */
function otherHeads(ranked: readonly HeadChoice[], first: HeadChoice): readonly HeadChoice[] {
  const bestByHead = new Map<HeadChoice["head"]["id"], HeadChoice>();
  for (const choice of ranked) {
    if (choice.head.id !== first.head.id && !bestByHead.has(choice.head.id)) {
      bestByHead.set(choice.head.id, choice);
    }
  }
  return [...bestByHead.values()].slice(0, RUNNERS_UP_SHOWN);
}

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

/** The heads in this truck, best first; or what is short, with the nearest in reach. */
export function rankHeads(
  question: PlanQuestion,
  sleeves: readonly SleeveModel[],
  how: Pick<HeadQuestion, "preferredMark" | "massWish">,
): RankedHeads {
  const { target, parts, tolerances } = question;
  const ranked = chooseHeads({ target, heads: parts.heads.filter(({ here }) => here), sleeves, tolerances, ...how });
  const [choice] = ranked;
  if (choice === undefined) {
    return { kind: "short", shortage: sleeveShortage(question, sleeves) ?? headShortage(target, parts.heads) };
  }
  return { kind: "ranked", choice, runnersUp: otherHeads(ranked, choice) };
}
