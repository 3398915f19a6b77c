import { type Instant, instant } from "../core/kinds.ts";
import { metaValue, setMeta } from "../db/repositories/meta.ts";
import { orderBySource } from "../db/repositories/orders.ts";
import { allTrucks, currentEvent } from "../db/repositories/people.ts";
import { type Db, write } from "../db/write.ts";
import { readWeek } from "./boundary/readWeek.ts";
import type { Week } from "./boundary/week.ts";
import type { Desk, Sender } from "./chat/types.ts";
import { WEEK_PLATFORM } from "./chat/weekPlatform.ts";
import { loadNobodyButTheLead, loadWeek } from "./operations/loadWeek.ts";
import { rehearsalClock, rehearsalDesk, settle } from "./rehearsalBot.ts";

const LOADED = "week.loaded";

export type OpenedWeek = { readonly kind: "ready" } | { readonly kind: "faults"; readonly lines: readonly string[] };

/**
 * Brings a fresh database to life: a team's week from files with its orders in progress, or nobody but the lead.
 *
 * Stopped halfway it goes on at the next start: the orders enter by the inbound door, which knows those it has seen.
 */
export async function openWeek(
  db: Db,
  from: { readonly folder: string | null; readonly at: ((zone: string) => Instant | null) | null },
  log: (error: unknown, reference: string) => void,
): Promise<OpenedWeek> {
  const loaded = metaValue(db, LOADED);
  const clock = rehearsalClock(db);
  const wanted = (): Instant => from.at?.(firstZone(db, clock.now())) ?? clock.now();
  if (loaded === "files" || loaded === "empty") {
    clock.moveTo(instant(Math.max(clock.now(), wanted())));
    return { kind: "ready" };
  }
  if (from.folder === null) {
    write(db, (tx) => {
      loadNobodyButTheLead(tx, WEEK_PLATFORM, "UTC");
      setMeta(tx, LOADED, "empty");
    });
    clock.moveTo(instant(Date.now()));
    clock.moveTo(wanted());
    return { kind: "ready" };
  }
  const read = readWeek(from.folder);
  if (read.kind === "faults") {
    return {
      kind: "faults",
      lines: read.faults.map(({ file, row, column, written, accepted }) =>
        [file, row === null ? null : `row ${row}`, column, written === null ? null : `"${written}"`]
          .filter((part) => part !== null)
          .join(", ")
          .concat(`: ${accepted}`),
      ),
    };
  }
  const { week } = read;
  const start = firstMoment(week);
  if (loaded === null) {
    write(db, (tx) => {
      loadWeek(tx, week, WEEK_PLATFORM, start);
      setMeta(tx, LOADED, "orders to follow");
    });
  }
  clock.moveTo(start);
  await replayOrders(db, week, rehearsalDesk(db, clock.now, log));
  await settle(db, clock.now, postedBefore);
  write(db, (tx) => setMeta(tx, LOADED, "files"));
  clock.moveTo(wanted());
  return { kind: "ready" };
}

/** The zone a start time is read in: where the first truck is. */
function firstZone(db: Db, now: Instant): string {
  const [truck] = allTrucks(db);
  return (truck === undefined ? null : currentEvent(db, truck.id, now)?.event.zone) ?? "UTC";
}

/** Just before the newest order was posted, or when the first truck arrives. */
function firstMoment(week: Week): Instant {
  const moments =
    week.orders.length > 0 ? week.orders.map(({ at }) => at) : week.events.flatMap(({ trucks }) => trucks.map(({ arrivesAt }) => arrivesAt));
  return instant(moments.reduce((first, at) => Math.min(first, at), moments[0] ?? 0));
}

/** What stood in the chat before anyone looked: it is in the record, and not drawn again. */
const postedBefore: Sender = {
  send: async (_channel, _card, { ref }) => ({ kind: "sent", message: ref }),
  edit: async (_channel, message) => ({ kind: "sent", message }),
  find: async () => null,
};

/** Orders in progress enter by the same door as any other, then the presses that brought them so far. */
async function replayOrders(db: Db, week: Week, desk: Desk): Promise<void> {
  const clock = rehearsalClock(db);
  const rolesOf = (handle: string): readonly string[] => week.people.find((person) => person.handle === handle)?.roles ?? [];
  for (const [index, order] of [...week.orders].sort((a, b) => a.at - b.at).entries()) {
    clock.moveTo(order.at);
    const sender = { platform: WEEK_PLATFORM, platformId: order.by, roleIds: rolesOf(order.by) };
    await desk.receive({ kind: "message", key: `message:week${index}:0`, channel: order.channel, sender, message: `week${index}`, text: order.text });
    const truck = week.channels.find((channel) => channel.name === order.channel)?.truck ?? null;
    const technician = week.people.find((person) => person.truck === truck && person.roles.includes("technician"));
    const presses = { draft: [], confirmed: [], started: ["start"], gluedOn: ["start", "glue"], finalCheck: ["start", "glue", "done"] }[
      order.progress
    ];
    for (const press of technician === undefined ? [] : presses) {
      const row = orderBySource(db, `message:week${index}`);
      if (row !== null && technician !== undefined) {
        const by = { platform: WEEK_PLATFORM, platformId: technician.handle, roleIds: technician.roles };
        await desk.receive({
          kind: "invoke",
          key: `invoke:week${index}-${press}`,
          channel: order.channel,
          sender: by,
          command: `step ${press}`,
          values: { order: `id:${row.id}` },
        });
      }
    }
  }
}
