import type { Action, Button } from "../chat/types.ts";
import type { ClubFacts, OrderFacts } from "../operations/orderFacts.ts";

type Act = (label: string, command: string, argument?: string, weight?: Button["weight"]) => Button;

const actOn =
  ({ order, version }: OrderFacts): Act =>
  (label, command, argument, weight = "plain") => {
    const action: Action = { command, subject: `order:${order}`, version, ...(argument === undefined ? {} : { argument }) };
    return { label, action, weight };
  };

/** Whether a finished club is in this truck, or where only its note says. */
export const isHere = ({ where }: NonNullable<ClubFacts["finished"]>, truck: string): boolean =>
  where.kind === "out" || where.truck === null || where.truck === truck;

/** Nothing keeps the draft from being confirmed: of a broken club, a finished one is here. */
export const canGo = ({ faults, kind, clubs, truck }: OrderFacts): boolean =>
  faults.length === 0 && (kind !== "broke" || clubs.every(({ finished }) => finished !== null && isHere(finished, truck)));

function draftButtons(facts: OrderFacts, act: Act): readonly Button[] {
  const goes = canGo(facts);
  return [
    ...(goes ? [act("Go", "order confirm", undefined, "main")] : []),
    ...(facts.kind === "broke" ? [act("Build one", "order build", undefined, goes ? "plain" : "main")] : []),
    ...(facts.bringerUnsaid
      ? [
          act("Caddie brings it", "order bring", "caddie"),
          act("Player brings it", "order bring", "player"),
          act("In the truck", "order bring", "inTruck"),
        ]
      : []),
    act("Change", "order change"),
    ...(facts.clubs.some(({ plan }) => plan !== null && plan.runnersUp.length > 0) ? [act("Other heads", "order heads")] : []),
    act("Drop", "order drop", undefined, "grave"),
  ];
}

function benchButtons(facts: OrderFacts, act: Act): readonly Button[] {
  return [
    ...(facts.state === "confirmed" && facts.awaitsClub && facts.heldReason === null
      ? [act("In the truck", "order arrived", undefined, "main")]
      : []),
    ...(facts.state === "finalCheck" && facts.clubs.some(({ check }) => check?.overall === "off") ? [act("Player takes it", "order accept")] : []),
    facts.heldReason === null ? act("Hold", "order hold") : act("Resume", "order resume", undefined, "main"),
    act("Scratch", "order scratch", undefined, "grave"),
  ];
}

/** What may be pressed on an order as it stands. */
export function orderButtons(facts: OrderFacts): readonly Button[] {
  const act = actOn(facts);
  switch (facts.state) {
    case "draft":
      return draftButtons(facts, act);
    case "confirmed":
    case "building":
    case "finalCheck":
      return benchButtons(facts, act);
    case "ready":
      return ["player", "caddie", "locker", "courier"].map((taker) => act(`To ${taker}`, "order handover", taker));
    case "outWithPlayer":
      return ["in the bag", "backup", "testing", "coming back"].map((answer) =>
        act(answer[0]?.toUpperCase() + answer.slice(1), "order bag", answer, answer === "in the bag" ? "main" : "plain"),
      );
    default:
      return [];
  }
}
