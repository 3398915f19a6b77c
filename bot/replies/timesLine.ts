import type { RouteStep } from "../../core/bench/benchTypes.ts";
import { defaultFloors } from "../../core/bench/routes.ts";
import type { Instant } from "../../core/kinds.ts";
import type { Line } from "../chat/types.ts";
import type { OrderFacts } from "../operations/orderFacts.ts";
import { line } from "./card.ts";
import { lackingWords } from "./lackingWords.ts";
import { canGo } from "./orderButtons.ts";
import { plural, timeText } from "./shown.ts";

/** A bonded hosel sets so long whatever the sheet says. */
const USUAL_HOSEL_MIN = 20;

const stepsOf = (facts: OrderFacts): readonly RouteStep[] => facts.clubs.flatMap(({ steps }) => steps.map(({ route }) => route));
const handsOnMin = (facts: OrderFacts): number => stepsOf(facts).reduce((sum, { unattended, medianMin }) => sum + (unattended ? 0 : medianMin), 0);

/** The longest wait beside the work, the walk left out: a glue or a grip that sets. */
function waitsWords(facts: OrderFacts): string {
  const waits = stepsOf(facts).filter(({ unattended, kind }) => unattended && kind !== "walk");
  const longest = waits.reduce((most, { medianMin }) => Math.max(most, medianMin), 0);
  return longest < 1 ? "" : ` and ${plural(Math.round(longest), "minute")} of setting`;
}

/** Glue or a grip that sets: only then is in hand not yet ready for full swings. */
const sets = (facts: OrderFacts): boolean => stepsOf(facts).some(({ kind }) => kind === "bondSet" || kind === "gripSet");

/** What is expected, and when it would be ready then; the promise waits until it is there. */
function expectedWords({ expectedAt, likelyAt, zone }: OrderFacts, now: Instant): string | null {
  return expectedAt === null || expectedAt <= now || likelyAt === null
    ? null
    : `Likely ${timeText(likelyAt, now, zone)} if it comes at ${timeText(expectedAt, now, zone)}; promised when it is there`;
}

/** A sheet that asks for more than the usual wait says so: the promise is later by it. */
function sheetLines(facts: OrderFacts): readonly Line[] {
  const longest = stepsOf(facts).reduce((most, { kind, floorMin }) => (kind === "bondSet" ? Math.max(most, floorMin) : most), 0);
  const isUsual = [0, defaultFloors.adhesiveHandleMin, USUAL_HOSEL_MIN].includes(longest);
  return isUsual || !["draft", "confirmed"].includes(facts.state)
    ? []
    : [line(`The glue sets ${plural(longest, "minute")} by its sheet; the times count it`)];
}

function noTimeWords(facts: OrderFacts, now: Instant): string {
  const work = Math.round(handsOnMin(facts));
  const known = lackingWords(facts.lacking) ?? expectedWords(facts, now);
  if (known !== null) {
    return known;
  }
  return facts.awaitsClub
    ? `No time before the ${facts.clubs.length > 1 ? "clubs are" : "club is"} in the truck; then about ${plural(work, "minute")} of work${waitsWords(facts)}`
    : "No promise before the truck leaves";
}

/** When it is in hand and what is promised, or why no time can be said. */
export function timesLine(facts: OrderFacts, now: Instant): readonly Line[] {
  const { likelyAt, promiseAt, playableAt, zone, byAt } = facts;
  const isBlocked = facts.state === "draft" && !canGo(facts);
  if (isBlocked || ["closed", "withdrawn", "outWithPlayer"].includes(facts.state)) {
    return [];
  }
  const wanted = byAt === null ? "" : `; wanted by ${timeText(byAt, now, zone)}`;
  if (facts.heldReason !== null) {
    const expected = expectedWords(facts, now);
    return [line(`${expected ?? "No time while held"}${promiseAt === null ? "" : `; promised ${timeText(promiseAt, now, zone)}`}${wanted}`)];
  }
  if (promiseAt === null) {
    return [line(`${noTimeWords(facts, now)}${wanted}`)];
  }
  const after = byAt !== null && promiseAt > byAt ? `, after your ${timeText(byAt, now, zone)}` : "";
  const playable = playableAt !== null && playableAt > promiseAt && sets(facts) ? `, full swings ${timeText(playableAt, now, zone)}` : "";
  const likely = likelyAt === null ? "" : `In hand ${timeText(likelyAt, now, zone)}, `;
  const isLate = likelyAt !== null && likelyAt > promiseAt;
  const promise = `${isLate ? "late: promised" : "promise"} ${timeText(promiseAt, now, zone)}`;
  return [line(`${likely}${promise}${after}${playable}${after === "" ? wanted : ""}`), ...sheetLines(facts)];
}
