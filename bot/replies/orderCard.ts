import type { RouteStep } from "../../core/bench/benchTypes.ts";
import type { ClubPlan } from "../../core/buildSheet/plan.ts";
import type { Instant } from "../../core/kinds.ts";
import type { Action, Button, Card, Json, Line } from "../chat/types.ts";
import type { ClubFacts, OrderFacts } from "../operations/orderFacts.ts";
import { card, line } from "./card.ts";
import { clubLines, clubRow } from "./clubLines.ts";
import { faultLines, quantityWords } from "./faultWords.ts";
import { clubsWords, clubWords, plural, timeText } from "./shown.ts";

export const stateWords: Readonly<Record<OrderFacts["state"], string>> = {
  draft: "draft",
  confirmed: "confirmed",
  building: "building",
  finalCheck: "final check",
  ready: "ready",
  outWithPlayer: "out with player",
  closed: "closed",
  withdrawn: "withdrawn",
};

/** `57 OXTOBY RH driver`: what every card about an order begins with. */
export function orderTitle(facts: OrderFacts): string {
  const family = facts.player.split(" ").at(-1) ?? facts.player;
  const kind = facts.kind === "build" ? "" : ` ${facts.kind}`;
  const clubs = clubsWords(facts.request.clubs);
  const count = facts.request.count > 1 ? ` ×${facts.request.count}` : "";
  return `${facts.number} ${family.toUpperCase()} ${facts.hand === "left" ? "LH" : "RH"}${kind} ${clubs}${count}`;
}

/** What was written, and only that. */
function wroteLine(facts: OrderFacts): Line {
  const written = Object.values(facts.request.clauses).flatMap((wish) => (wish === undefined ? [] : [wish.asWritten]));
  const like =
    facts.request.like === null ? [] : [`like ${facts.request.like.from === "order" ? facts.request.like.number : facts.request.like.from}`];
  const all = [...written, ...like];
  return line(all.length === 0 ? "Wrote no values" : `Wrote ${all.join(", ")}`);
}

const isOver = ({ state }: OrderFacts): boolean => state === "closed" || state === "withdrawn";

/** One club in full; of many what is short first, then a line each. */
function clubsLines(facts: OrderFacts): readonly Line[] {
  const [only, ...others] = facts.clubs;
  const faults = faultLines(facts.faults, others.length > 0).map((text) => line(text));
  if (only === undefined || others.length === 0) {
    return only === undefined ? faults : [...clubLines(only), ...faults];
  }
  const rows = sharedSetting(facts.clubs);
  return [...faults, ...rows];
}

/** What all the clubs of a set share is said once. */
function sharedSetting(clubs: readonly ClubFacts[]): readonly Line[] {
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
    ...clubs.flatMap(clubRow),
  ];
}

const stepsOf = (facts: OrderFacts): readonly RouteStep[] => facts.clubs.flatMap(({ steps }) => steps.map(({ route }) => route));
const handsOnMin = (facts: OrderFacts): number => stepsOf(facts).reduce((sum, { unattended, medianMin }) => sum + (unattended ? 0 : medianMin), 0);

/** The longest wait beside the work, the walk left out: a glue or a grip that sets. */
function waitsWords(facts: OrderFacts): string {
  const waits = stepsOf(facts).filter(({ unattended, kind }) => unattended && kind !== "walk");
  const longest = waits.reduce((most, { medianMin }) => Math.max(most, medianMin), 0);
  return longest < 1 ? "" : ` and ${plural(Math.round(longest), "minute")} of setting`;
}

function timesLine(facts: OrderFacts, now: Instant): readonly Line[] {
  const { likelyAt, promiseAt, playableAt, zone, byAt } = facts;
  if (["closed", "withdrawn", "outWithPlayer"].includes(facts.state)) {
    return [];
  }
  if (promiseAt === null) {
    const work = Math.round(handsOnMin(facts));
    return [
      line(
        facts.heldReason !== null
          ? "No time while held"
          : facts.awaitsClub
            ? `No time before the club is in the truck; then about ${plural(work, "minute")} of work${waitsWords(facts)}`
            : "No promise before the truck leaves",
      ),
    ];
  }
  const late = byAt !== null && promiseAt > byAt ? `, after your ${timeText(byAt, now, zone)}` : "";
  const playable = playableAt !== null && playableAt > promiseAt ? `, full swings ${timeText(playableAt, now, zone)}` : "";
  const likely = likelyAt === null ? "" : `In hand ${timeText(likelyAt, now, zone)}, `;
  return [line(`${likely}promise ${timeText(promiseAt, now, zone)}${late}${playable}`)];
}

const bringerWords = { player: "The player", caddie: "The caddie", rep: "The rep" } as const;

function bringLines(facts: OrderFacts): readonly Line[] {
  const { broughtBy } = facts.request;
  if (!facts.awaitsClub || isOver(facts)) {
    return [];
  }
  return broughtBy === null || broughtBy === "inTruck"
    ? [line("Who brings the club? Its clock starts when it is in the truck")]
    : [line(`${bringerWords[broughtBy]} brings the club; its clock starts when it is in the truck`)];
}

/** Events that keep a list ask for a driver head before it leaves the truck. */
function listLines(facts: OrderFacts): readonly Line[] {
  return facts.listEntries.map(({ model, listed, isFresh, forTesting }) => {
    const name = facts.clubs.find(({ plan }) => plan?.choice.head.model.name === model)?.headShown ?? model;
    if (listed === false) {
      return line(`${name} is not on the list for play: testing only`);
    }
    return line(
      `${name}: ${isFresh ? "on the list for play" : forTesting ? "not looked up in the list for play: testing only" : "the list for play is asked before hand-over"}`,
    );
  });
}

function bagLines({ bagCount, request }: OrderFacts): readonly Line[] {
  if (bagCount === null) {
    return [];
  }
  const out = `Out: ${(request.out ?? []).map(clubWords).join(", ")}`;
  return [line(bagCount === FULL_BAG ? `${out}; the bag stays at ${FULL_BAG}` : `${out}; that makes ${bagCount} clubs, not ${FULL_BAG}`)];
}

const FULL_BAG = 14;

function stateLines(facts: OrderFacts): readonly Line[] {
  const held = facts.heldReason === null ? [] : [line(`Held: ${facts.heldReason}`)];
  const taken = facts.takenBy === null ? [] : [line(`Taken by ${facts.takenBy}${facts.answer === null ? "; in the bag?" : `; ${facts.answer}`}`)];
  const owed =
    facts.state === "ready" || facts.state === "finalCheck"
      ? facts.owed.map((row) => line(`Owed on the ${clubWords(row.club)}: stamp ${row.text}`))
      : [];
  return [...held, ...bagLines(facts), ...bringLines(facts), ...taken, ...owed, ...listLines(facts)];
}

function buttonsOf(facts: OrderFacts, canGo: boolean): readonly Button[] {
  const act = (label: string, command: string, argument?: string, weight: Button["weight"] = "plain"): Button => {
    const action: Action = { command, subject: `order:${facts.order}`, version: facts.version, ...(argument === undefined ? {} : { argument }) };
    return { label, action, weight };
  };
  switch (facts.state) {
    case "draft":
      return [
        ...(canGo ? [act("Go", "order confirm", undefined, "main")] : []),
        ...(facts.kind === "broke" ? [act("Build one", "order build", undefined, canGo ? "plain" : "main")] : []),
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
    case "confirmed":
    case "building":
    case "finalCheck":
      return [
        ...(facts.state === "confirmed" && facts.awaitsClub && facts.heldReason === null
          ? [act("In the truck", "order arrived", undefined, "main")]
          : []),
        ...(facts.state === "finalCheck" && facts.clubs.some(({ check }) => check?.overall === "off")
          ? [act("Player takes it", "order accept")]
          : []),
        facts.heldReason === null ? act("Hold", "order hold") : act("Resume", "order resume", undefined, "main"),
        act("Scratch", "order scratch", undefined, "grave"),
      ];
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

/** What one club of an order comes to, unrounded. */
function clubData(club: ClubFacts): Readonly<Record<string, Json>> {
  const { plan, service } = club;
  if (plan !== null) {
    const { head, attitude, bend, mark } = plan.choice;
    return {
      headSerial: head.serial,
      sleeveMark: mark,
      squaredLoftDeg: attitude.squaredLoftDeg,
      soledFaceDeg: attitude.soledFaceDeg,
      seatedLieDeg: attitude.seatedLieDeg,
      loftChangeDeg: bend?.loftChangeDeg ?? 0,
      lieChangeDeg: bend?.lieChangeDeg ?? 0,
      headMassG: head.massG,
      ...plan.predicted,
    };
  }
  return service === null ? { headSerial: club.finished?.club.headSerial ?? null } : { ...service.predicted };
}

/** Every number the card shows, unrounded. */
export function orderData(facts: OrderFacts): Readonly<Record<string, Json>> {
  const [first] = facts.clubs;
  return {
    orderNumber: facts.number,
    orderId: facts.order,
    orderVersion: facts.version,
    state: facts.state,
    likelyAt: facts.likelyAt,
    promiseAt: facts.promiseAt,
    playableAt: facts.playableAt,
    byAt: facts.byAt,
    ...(first === undefined ? {} : clubData(first)),
    ...(facts.clubs.length > 1 ? { clubs: facts.clubs.map((club) => ({ club: club.club, copyNumber: club.copy, ...clubData(club) })) } : {}),
  };
}

/** A trial starts from a shaft the player has played. */
function startWords({ clubs, playedShafts, request }: OrderFacts): string {
  const shaft = clubs[0]?.plan?.shaft?.model.name;
  const isNew = request.purpose === "test" && shaft !== undefined && playedShafts.length > 0 && !playedShafts.includes(shaft);
  return isNew ? ", and starts from a shaft he has played" : "";
}

/** Nothing keeps the draft from being confirmed: of a broken club, a finished one is there. */
const canGo = ({ faults, kind, clubs }: OrderFacts): boolean =>
  faults.length === 0 && (kind !== "broke" || clubs.every(({ finished }) => finished !== null));

/** The order's own post: it is edited in place through the order's life. */
export function orderCard(facts: OrderFacts, now: Instant): Card {
  const { state } = facts;
  const tone = state === "ready" ? "good" : facts.faults.length > 0 || facts.heldReason !== null ? "attention" : "plain";
  const purpose = facts.request.purpose === "gamer" ? "" : `, for ${facts.request.purpose}`;
  const changes = facts.clubs[0]?.plan?.changes ?? [];
  return card({
    kind: `order.${state}`,
    title: `${orderTitle(facts)}${purpose} · ${stateWords[state]}${facts.heldReason === null ? "" : ", held"}`,
    tone,
    lines: [wroteLine(facts), ...clubsLines(facts), ...timesLine(facts, now), ...stateLines(facts)],
    fields: [
      { label: "Posted by", value: line(facts.postedBy.name) },
      ...(changes.length > 1
        ? [
            {
              label: "Differs from the club it is like",
              value: line(
                `${plural(changes.length, "thing")}: ${changes.map((name) => quantityWords[name] ?? name).join(", ")}. A test says most when one thing changes${startWords(facts)}.`,
              ),
            },
          ]
        : []),
      ...(facts.request.note === null ? [] : [{ label: "Note", value: line(facts.request.note) }]),
    ],
    buttons: buttonsOf(facts, canGo(facts)),
    data: orderData(facts),
  });
}
