import type { ClubPlan } from "../../core/buildSheet/plan.ts";
import type { Line } from "../chat/types.ts";
import type { OrderFacts } from "../operations/orderFacts.ts";
import { line } from "./card.ts";
import { clubLines, clubRow } from "./clubLines.ts";
import { faultLines } from "./faultWords.ts";

/** One club in full; of many what is short comes first. */
export function clubsLines(facts: OrderFacts): readonly Line[] {
  const [only, ...others] = facts.clubs;
  const faults = faultLines(facts, others.length > 0).map((text) => line(text));
  if (only === undefined || others.length === 0) {
    return only === undefined ? faults : [...clubLines(facts, only), ...faults];
  }
  return [...faults, ...setLines(facts)];
}

/** What all the clubs of a set share is said once, then a line each. */
function setLines(facts: OrderFacts): readonly Line[] {
  const { clubs } = facts;
  const shared = (of: (plan: ClubPlan) => string | undefined): string | null => {
    const said = new Set(clubs.flatMap(({ plan }) => (plan === null ? [] : (of(plan) ?? []))));
    const [first] = said;
    return said.size === 1 && first !== undefined ? first : null;
  };
  const shaft = shared((plan) => plan.shaft?.model.name);
  const grip = shared((plan) => plan.grip?.model.name);
  const both = [shaft, grip].filter((name) => name !== null);
  return [
    ...(both.length === 0 ? [] : [line(`All: ${both.join("; ")}`)]),
    ...(clubs.some(({ service }) => service?.kind === "check") ? [line("Read as found > as left; on record:")] : []),
    ...clubs.flatMap((club) => clubRow(facts, club)),
  ];
}
