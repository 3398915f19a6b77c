import type { StepKind } from "../../core/bench/benchTypes.ts";
import { clubFamily } from "../../core/kinds.ts";
import { cautionsFor } from "../../core/rules/cautionsFor.ts";
import type { WorkMaterial } from "../../core/rules/cautionTypes.ts";
import type { Line } from "../chat/types.ts";
import type { ClubFacts, OrderFacts } from "../operations/orderFacts.ts";
import { line } from "./card.ts";
import { cautionWords } from "./cautionWords.ts";

/** Behind every caution: what goes before it. */
export const advice = "Follow the product's data sheet and local rules; if unsure ask a qualified person.";

/** Lead of less than this is no step of its own on the sheet. */
const LEAST_LEAD_G = 0.25;

/** A shaft that stays on its club, and may be either. */
const anyShaft: readonly WorkMaterial[] = ["graphite", "steel"];

/** A bonded head comes off hot; a sleeve by its screw. */
const comesOffHot = ({ kind }: OrderFacts, { plan }: ClubFacts): boolean =>
  kind === "reshaft" || kind === "repair" || (kind === "swap" && plan?.choice.mark === null);

function isGlued(step: StepKind, order: OrderFacts, club: ClubFacts): boolean {
  if (step === "removeOld" || step === "coolDown") return comesOffHot(order, club);
  return step === "bend" || club.steps.some(({ route }) => route.kind === "bond");
}

/** Nobody records what a head is made of or how a grip goes on: a wood's is taken for titanium, a grip's way for solvent. */
function atHand(step: StepKind, order: OrderFacts, club: ClubFacts): readonly WorkMaterial[] {
  const family = clubFamily(club.club);
  const head: WorkMaterial = family === "driver" || family === "fairway" ? "titanium" : "steel";
  const shaft = club.plan?.shaft == null ? anyShaft : [club.plan.shaft.model.material];
  return [
    ...(step === "soleWork" ? [head] : shaft),
    ...(isGlued(step, order, club) ? (["epoxy"] as const) : []),
    "gripSolvent",
    ...((club.plan?.leadG ?? 0) >= LEAST_LEAD_G ? (["lead"] as const) : []),
  ];
}

/** What may hurt at one step of a club, the gravest first. */
export function stepCautions(order: OrderFacts, club: ClubFacts, step: StepKind): readonly string[] {
  const isCold = step === "removeOld" && !comesOffHot(order, club);
  return isCold ? [] : cautionsFor(step, atHand(step, order, club)).map(({ code }) => cautionWords[code]);
}

/** States in which somebody works at it, or soon will. */
const atWork: readonly OrderFacts["state"][] = ["confirmed", "building", "finalCheck"];

/** The cautions of the next step that has any, in one line; none once nothing is left to do. */
export function cautionLine(order: OrderFacts): readonly Line[] {
  if (!atWork.includes(order.state)) return [];
  for (const club of order.clubs) {
    for (const { route, state } of club.steps) {
      const words = state === "todo" || state === "running" ? stepCautions(order, club, route.kind) : [];
      if (words.length > 0) return [line(sentence(words.join("; ")))];
    }
  }
  return [];
}

const sentence = (words: string): string => `Caution: ${words.slice(0, 1).toUpperCase()}${words.slice(1)}. ${advice}`;
