import type { Line } from "../chat/types.ts";
import type { OrderFacts } from "../operations/orderFacts.ts";
import { line } from "./card.ts";
import { clubWords, firstName } from "./shown.ts";

const isOver = ({ state }: OrderFacts): boolean => state === "closed" || state === "withdrawn";

const bringerWords = { player: "The player", caddie: "The caddie", rep: "The rep" } as const;

function bringLines(facts: OrderFacts): readonly Line[] {
  const { broughtBy } = facts.request;
  if (!facts.awaitsClub || isOver(facts)) {
    return [];
  }
  const several = facts.clubs.length > 1;
  const them = several ? "the clubs" : "the club";
  const clock = several ? "The clock starts when they are in the truck" : "Its clock starts when it is in the truck";
  return broughtBy === null || broughtBy === "inTruck"
    ? [line(`Who brings ${them}? ${clock}`)]
    : [line(`${bringerWords[broughtBy]} brings ${them}; ${clock.toLowerCase()}`)];
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
  const out = `Out: ${request.out.map(clubWords).join(", ")}`;
  return [line(bagCount === FULL_BAG ? `${out}; the bag stays at ${FULL_BAG}` : `${out}; that makes ${bagCount} clubs, not ${FULL_BAG}`)];
}

const FULL_BAG = 14;

/** Work on it rests: in whose hands, and where it lies. */
function restLines({ atBench: { resting, hands, lies } }: OrderFacts): readonly Line[] {
  if (resting === null) {
    return [];
  }
  const who = resting === "handedBack" ? "Handed back at the bench" : `Paused${hands === null ? "" : ` by ${firstName(hands.name)}`}`;
  return [line(`${who}${lies === null ? "" : `; it lies: ${lies}`}`)];
}

/** What an order waits for, and what is to be known before it leaves the truck. */
export function stateLines(facts: OrderFacts): readonly Line[] {
  const held = facts.heldReason === null ? [] : [line(`Held: ${facts.heldReason}`)];
  const taken = facts.takenBy === null ? [] : [line(`Taken by ${facts.takenBy}${facts.answer === null ? "; in the bag?" : `; ${facts.answer}`}`)];
  const owed =
    facts.state === "ready" || facts.state === "finalCheck"
      ? facts.owed.map((row) => line(`Owed on the ${clubWords(row.club)}: stamp ${row.text}`))
      : [];
  return [...held, ...restLines(facts), ...bagLines(facts), ...bringLines(facts), ...taken, ...owed, ...listLines(facts)];
}
