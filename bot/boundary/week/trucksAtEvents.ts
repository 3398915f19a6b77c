import type { Week } from "../week.ts";
import type { FaultList } from "./faultList.ts";
import { groupBy, namesIn, requireKnown, requireUnique } from "./known.ts";
import type { ReadRow } from "./readTable.ts";
import type { WeekTables } from "./weekTables.ts";
import { requireInstant, zonesOfEvents } from "./zones.ts";

type Stay = Week["events"][number]["trucks"][number] & { readonly event: string; readonly row: ReadRow<unknown> };
type Opening = Week["events"][number]["open"][number] & { readonly event: string; readonly row: ReadRow<unknown> };

/** When each truck stands at each event, and when it is open there, by the event's name. */
export function trucksAtEvents(tables: WeekTables, faults: FaultList) {
  const stays = staysOf(tables, faults);
  const openings = openingsOf(tables, faults);
  requireApart(faults, stays, "arrives_at", ({ arrivesAt, rollOutAt }) => [arrivesAt, rollOutAt]);
  requireApart(faults, openings, "opens_at", ({ from, to }) => [from, to]);
  return {
    stays: plainByEvent(stays, ({ truck, arrivesAt, rollOutAt }) => ({ truck, arrivesAt, rollOutAt })),
    open: plainByEvent(openings, ({ truck, from, to }) => ({ truck, from, to })),
  };
}

function staysOf(tables: WeekTables, faults: FaultList): readonly Stay[] {
  const { events, trucks, eventTrucks } = tables;
  const [eventNames, truckNames, zones] = [namesIn(events, "name"), namesIn(trucks, "name"), zonesOfEvents(tables)];
  requireUnique(faults, eventTrucks.rows, ["event", "truck"]);
  return eventTrucks.rows.map((row) => {
    const { event, truck, arrives_at, roll_out_at } = row.value;
    requireKnown(faults, row, "event", eventNames, events.file);
    requireKnown(faults, row, "truck", truckNames, trucks.file);
    const arrivesAt = requireInstant(faults, row, "arrives_at", zones.get(event), arrives_at);
    const rollOutAt = requireInstant(faults, row, "roll_out_at", zones.get(event), roll_out_at);
    if (zones.has(event) && rollOutAt <= arrivesAt) faults.add(row, "roll_out_at", "a time after arrives_at");
    return { event, row, truck, arrivesAt, rollOutAt };
  });
}

function openingsOf(tables: WeekTables, faults: FaultList): readonly Opening[] {
  const { eventTrucks, openings } = tables;
  const zones = zonesOfEvents(tables);
  const atEvent = new Set(eventTrucks.written.map(({ cells }) => JSON.stringify([cells.event, cells.truck])));
  return openings.rows.map((row) => {
    const { event, truck, opens_at, closes_at } = row.value;
    if (!atEvent.has(JSON.stringify([event, truck]))) faults.add(row, "truck", `a truck at the event in ${eventTrucks.file}`);
    const from = requireInstant(faults, row, "opens_at", zones.get(event), opens_at);
    const to = requireInstant(faults, row, "closes_at", zones.get(event), closes_at);
    if (zones.has(event) && to <= from) faults.add(row, "closes_at", "a time after opens_at");
    return { event, row, truck, from, to };
  });
}

/** Requires the intervals of one truck not to overlap: a truck is in one place at a time. */
function requireApart<T extends Stay | Opening>(
  faults: FaultList,
  all: readonly T[],
  column: string,
  ends: (one: T) => readonly [number, number],
): void {
  for (const ofTruck of groupBy(all, ({ truck }) => truck).values()) {
    const inOrder = ofTruck.toSorted((one, other) => ends(one)[0] - ends(other)[0]);
    for (const [at, next] of inOrder.entries()) {
      const before = inOrder[at - 1];
      if (before === undefined || ends(before)[1] <= ends(next)[0]) continue;
      if (ends(next)[0] !== 0) faults.add(next.row, column, `a time after row ${before.row.row} of the same truck has ended`);
    }
  }
}

function plainByEvent<T extends { readonly event: string }, Plain>(
  all: readonly T[],
  plain: (one: T) => Plain,
): ReadonlyMap<string, readonly Plain[]> {
  return new Map([...groupBy(all, ({ event }) => event)].map(([event, ones]) => [event, ones.map(plain)]));
}
