import type { Instant } from "../../core/kinds.ts";
import type { Button, Card, Line } from "../chat/types.ts";
import type { Slip } from "../operations/applyEstimate.ts";
import type { OrderFacts } from "../operations/orderFacts.ts";
import type { SlipCause } from "../operations/slipCause.ts";
import { card, line } from "./card.ts";
import { orderTitle } from "./orderTitle.ts";
import { plural, timeText } from "./shown.ts";
import { stepWords } from "./stepWords.ts";

type ToldSlip = Slip & { readonly facts: OrderFacts };

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

function causeWords(cause: SlipCause, now: Instant, zone: string): string {
  switch (cause.kind) {
    case "fewerHands":
      return cause.now === 0 ? "nobody is at the bench" : `${plural(cause.now, "technician")} where there were ${cause.before}`;
    case "slowStep":
      return `“${lower(stepWords[cause.step])}” takes longer than usual, by ${plural(Math.round(cause.overMin), "minute")} so far`;
    case "resting":
      return `it was laid aside at ${timeText(cause.since, now, zone)}`;
    case "noPress":
      return `no press on it since ${timeText(cause.since, now, zone)}: is one missing?`;
    case "behind":
      return `${cause.numbers.join(", ")} came in after it and ${cause.numbers.length > 1 ? "go" : "goes"} first`;
    case "closed":
      return "it is not ready before the workshop closes";
    case "notStarted":
      return "it has not been started";
    case "bench":
      return "the bench is slower than thought";
  }
}

const newTime = ({ promiseAt, facts }: ToldSlip, now: Instant): string =>
  promiseAt === null ? "not before the truck leaves" : `now ${timeText(promiseAt, now, facts.zone)}`;

const called = ({ facts, promisedBeforeAt }: ToldSlip, now: Instant): Line =>
  line(
    { call: facts.postedBy.id, name: facts.postedBy.name },
    promisedBeforeAt === null ? "" : ` promised ${timeText(promisedBeforeAt, now, facts.zone)}`,
    facts.byAt === null ? "" : `, wanted by ${timeText(facts.byAt, now, facts.zone)}`,
  );

/** Of several each can be put first; to withdraw one its own post has a button. */
function choices({ facts, order }: ToldSlip, several: boolean): readonly Button[] {
  const act = (label: string, command: string, weight: Button["weight"]): Button => ({
    label,
    weight,
    action: { command, subject: `order:${facts.order}`, version: facts.version },
  });
  const first = order.urgent ? [] : [act(several ? `${facts.number} first` : "First in line", "order first", "plain")];
  return several ? first : [...first, act("Scratch", "order scratch", "grave")];
}

/** One row of buttons. */
const MOST_WITH_CHOICE = 5;

/** Orders that are later than was said: new time, cause, and the choice; the rep is called once. */
export function lateCard(slips: readonly ToldSlip[], now: Instant): Card {
  const [first, ...others] = slips;
  const several = others.length > 0;
  const data = slips.map(({ facts, promiseAt, promisedBeforeAt, cause }) => ({
    orderNumber: facts.number,
    promiseAt,
    promisedBeforeAt,
    cause: cause.kind,
  }));
  const title =
    first === undefined || several
      ? `${plural(slips.length, "order")} are later than said`
      : `${orderTitle(first.facts)} is late: ${newTime(first, now)}`;
  const lines = slips.flatMap((slip) =>
    several
      ? [
          line({ strong: orderTitle(slip.facts) }, ` ${newTime(slip, now)}`),
          called(slip, now),
          line(`Cause: ${causeWords(slip.cause, now, slip.facts.zone)}`),
        ]
      : [called(slip, now), line(`Cause: ${causeWords(slip.cause, now, slip.facts.zone)}`)],
  );
  return card({
    kind: "call.late",
    title,
    tone: "attention",
    lines: [
      ...lines,
      line(several ? "Let them run, or put one first. To withdraw one, press Scratch on its post." : "Let it run, put it first, or withdraw it."),
    ],
    buttons: slips.slice(0, several ? MOST_WITH_CHOICE : 1).flatMap((slip) => choices(slip, several)),
    data: several ? { orders: data } : (data[0] ?? {}),
  });
}
