import { bendAllowed } from "../head/bendAllowed.ts";
import { bendLeft } from "../head/bendLeft.ts";
import { degrees } from "../quantity/units.ts";
import { chooseHeads, type HeadQuestion } from "../selection/chooseHeads.ts";
import { headToBend } from "../selection/headToBend.ts";
import { foundHead } from "./foundHead.ts";
import type { Deviation, HeadChoice, Remedy } from "./plan.ts";

const SHOWN = 3;
/** A stamp is a name: heads of it measure up to so much apart. Common practice, no source. */
const NEAR_STAMP_DEG = 1;
/** No head is asked farther at once. */
const FARTHEST_DEG = 10;

const missOf = ({ misses }: HeadChoice, quantity: Deviation["quantity"]): Deviation | null =>
  misses.find((miss) => miss.quantity === quantity) ?? null;

const loftWished = ({ target }: HeadQuestion) => target.squaredLoftDeg ?? target.stampedLoftDeg;

/** The stamp of a model to send for: the known one nearest to the loft that is missed, if it is near enough to be of use. */
function stampToSend({ heads, target }: HeadQuestion, choice: HeadChoice): readonly Remedy[] {
  const miss = missOf(choice, "squaredLoftDeg");
  if (miss === null) {
    return [];
  }
  const { model } = choice.head;
  const offDeg = (stampDeg: number) => Math.abs(stampDeg - (target.stampedLoftDeg ?? miss.wanted));
  const [stampedLoftDeg] = heads
    .filter((head) => head.model.id === model.id)
    .map((head) => head.stampedLoftDeg)
    .sort((one, other) => offDeg(one) - offDeg(other) || one - other);
  return stampedLoftDeg === undefined || offDeg(stampedLoftDeg) > NEAR_STAMP_DEG ? [] : [{ code: "order-head", model: model.name, stampedLoftDeg }];
}

/** Heads that do not lie here and miss less; where there is none, the stamp to send for. */
function otherHeads(question: HeadQuestion, choice: HeadChoice): readonly Remedy[] {
  const elsewhere = chooseHeads({ ...question, heads: question.heads.filter(({ here }) => !here) });
  const nearer = elsewhere.filter(({ misses }) => misses.length < choice.misses.length).slice(0, SHOWN);
  return nearer.length === 0
    ? stampToSend(question, choice)
    : nearer.map(({ head, misses }) => ({ code: "head-elsewhere", missCount: misses.length, ...foundHead(head) }));
}

/** Heads of other grinds that have the bounce at the loft wished, the best of each, this truck first. */
function otherGrinds(question: HeadQuestion, choice: HeadChoice): readonly Remedy[] {
  const target = { ...question.target, headModel: null, grind: null, stampedLoftDeg: null, squaredLoftDeg: loftWished(question) };
  const fits = (other: HeadChoice) => other.bounceDeg !== null && missOf(other, "squaredLoftDeg") === null && missOf(other, "bounceDeg") === null;
  const heads = question.heads.filter(({ model }) => model.grind !== choice.head.model.grind);
  const fitting = chooseHeads({ ...question, target, heads }).filter(fits);
  const inOrder = [...fitting.filter(({ head }) => head.here), ...fitting.filter(({ head }) => !head.here)];
  const bestOfEach = new Map(inOrder.toReversed().map((other) => [other.head.model.id, other]));
  return inOrder
    .filter((other) => bestOfEach.get(other.head.model.id) === other)
    .slice(0, SHOWN)
    .flatMap(({ head, attitude, bounceDeg, bend }): readonly Remedy[] => {
      const left = { squaredLoftDeg: attitude.squaredLoftDeg, bend };
      return bounceDeg === null ? [] : [{ code: "another-grind", grind: head.model.grind, ...left, bounceDeg, ...foundHead(head) }];
    });
}

/** Bounce that does not come with the loft: another grind, sole work, or the loft at which it does. */
function forBounce(question: HeadQuestion, choice: HeadChoice): readonly Remedy[] {
  const miss = missOf(choice, "bounceDeg");
  const { family } = choice.head.model;
  if (miss === null || (family !== "iron" && family !== "wedge")) {
    return [];
  }
  const made = headToBend(choice.head, question.skilledTechnician ?? false);
  const soFarDeg = choice.bend?.loftChangeDeg ?? 0;
  const missDeg = miss.wanted - miss.got;
  const canBend = made !== null && Math.abs(soFarDeg + missDeg) <= Math.min(bendLeft(made).loft.leftDeg, FARTHEST_DEG) + 1e-9;
  const loftDeg = degrees(choice.attitude.squaredLoftDeg + missDeg);
  return [
    ...otherGrinds(question, choice),
    { code: "sole-work", bounceChangeDeg: degrees(missDeg) },
    ...(canBend ? [{ code: "loft-for-bounce", squaredLoftDeg: loftDeg, bounceDeg: degrees(miss.wanted) } as const] : []),
  ];
}

/** Why the head is not bent all the way to a loft or a lie that it misses. */
function whyNotBent(question: HeadQuestion, { head, bend, misses }: HeadChoice): readonly Remedy[] {
  const made = headToBend(head, question.skilledTechnician ?? false);
  const restOf = (quantity: Deviation["quantity"], soFarDeg: number) => {
    const miss = misses.find((one) => one.quantity === quantity);
    const wholeDeg = miss === undefined ? 0 : soFarDeg + miss.wanted - miss.got;
    return degrees(Math.min(FARTHEST_DEG, Math.max(-FARTHEST_DEG, wholeDeg)));
  };
  if (made === null) {
    return [];
  }
  const { reasons } = bendAllowed(made, {
    loftChangeDeg: restOf("squaredLoftDeg", bend?.loftChangeDeg ?? 0),
    lieChangeDeg: restOf("seatedLieDeg", bend?.lieChangeDeg ?? 0),
  });
  return reasons.filter(({ code }) => code !== "past-warning").map((reason) => ({ code: "no-further-bend", reason }));
}

/**
 * What could be done where a head misses its wish: a head that lies elsewhere or has to be sent, another grind or sole
 * work where bounce and loft do not come together, the loft at which they do; and why it is not bent further.
 */
export function remediesFor(question: HeadQuestion, choice: HeadChoice): readonly Remedy[] {
  return choice.misses.length === 0 ? [] : [...otherHeads(question, choice), ...forBounce(question, choice), ...whyNotBent(question, choice)];
}
