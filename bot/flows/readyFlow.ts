import type { ReadyEstimate } from "../../core/bench/benchTypes.ts";
import type { BuildRequest } from "../../core/buildSheet/buildRequest.ts";
import { currentEvent, playerById } from "../../db/repositories/people.ts";
import { readMessage } from "../boundary/readMessage.ts";
import type { Context } from "../chat/context.ts";
import type { Reply } from "../chat/types.ts";
import { readingContext } from "../desk/readingContext.ts";
import { awaitsClub } from "../operations/awaitsClub.ts";
import { type BenchExtra, extraOrder } from "../operations/benchExtra.ts";
import { deadlineOf } from "../operations/draftOrder.ts";
import { lackingAt } from "../operations/lackingAt.ts";
import { orderFacts } from "../operations/orderFacts.ts";
import { timesOf } from "../operations/orderTimes.ts";
import { planOrder } from "../operations/planOrder.ts";
import { readySlips } from "../operations/readySlips.ts";
import { reply } from "../replies/card.ts";
import { deadlineNote, noTruckNote } from "../replies/draftNotes.ts";
import { type ReadyFacts, readyCard, readyHint } from "../replies/readyCard.ts";

/** The text as an order: as it stands, as a build, as a build like the gamer; null when it reads as none. */
function requestIn(context: Context, text: string): BuildRequest | null {
  const bare = text.replace(/\?+\s*$/, "").trim();
  const reading = context.read((reader) => readingContext(reader, context.actor, context.now));
  const requests = [bare, `build ${bare}`, `build ${bare} like gamer`].flatMap((whole) => {
    const read = readMessage(whole, reading);
    return read.kind === "order" ? [read.request] : [];
  });
  const says = ({ kind, like, clauses }: BuildRequest): boolean => kind !== "build" || like !== null || Object.keys(clauses).length > 0;
  return requests.find(says) ?? requests[0] ?? null;
}

const chanceOf = (times: readonly ReadyEstimate[]): number | null =>
  times.reduce<number | null>(
    (least, { order, chanceByDue }) => (order !== extraOrder || chanceByDue === null ? least : Math.min(least ?? 1, chanceByDue)),
    null,
  );

/** Below it the deadline is not to be promised, and what it would take is said. */
const LIKELY_ENOUGH = 0.9;

/** The times of an order that is not posted yet, the chance to make its `by`, and who would slip by it. Nothing is kept. */
export async function readyFlow(context: Context, text: string): Promise<Reply> {
  const { now, actor } = context;
  const { truck } = actor;
  const current = truck === null ? null : context.read((reader) => currentEvent(reader, truck, now));
  if (truck === null || current === null) {
    return noTruckNote();
  }
  const request = requestIn(context, text);
  if (request === null) {
    return readyHint(text);
  }
  const deadline = context.read((reader) => deadlineOf(reader, request, truck, now));
  if (deadline.kind !== "none" && deadline.kind !== "at") {
    return deadlineNote(deadline, now, actor.zone);
  }
  const byAt = deadline.kind === "at" ? deadline.at : null;
  const planned = context.read((reader) => planOrder(reader, { request, truckId: truck, now }));
  const extra: BenchExtra = { kind: request.kind, clubs: planned, dueAt: byAt, urgent: request.urgent, releaseAt: null };
  const without = await context.estimate(truck, null);
  const withIt = await context.estimate(truck, extra);
  const chance = chanceOf(withIt.times);
  const isTight = !request.urgent && chance !== null && chance < LIKELY_ENOUGH;
  const first = isTight ? await context.estimate(truck, { ...extra, urgent: true }) : null;
  const slipsIn = (times: readonly ReadyEstimate[]): ReadyFacts["slips"] =>
    context.read((reader) =>
      readySlips(reader, without.times, times).map(({ order, ...slip }) => ({ ...slip, facts: orderFacts(reader, order, now) })),
    );
  const player = context.read((reader) => playerById(reader, request.player));
  const facts: ReadyFacts = {
    request,
    player: player?.restrictedCode ?? player?.name ?? "",
    zone: actor.zone,
    byAt,
    ...timesOf(withIt.times, extraOrder),
    chance,
    awaitsClub: awaitsClub(request, null),
    lacking: context.read((reader) =>
      lackingAt(
        reader,
        truck,
        planned.flatMap(({ route }) => route.steps),
        now,
      ),
    ),
    cannotYet: planned.some(({ faults }) => faults.length > 0),
    slips: slipsIn(withIt.times),
    first: first === null ? null : { ...timesOf(first.times, extraOrder), chance: chanceOf(first.times), slips: slipsIn(first.times) },
  };
  return reply(readyCard(facts, now));
}
