import type { Week } from "../week.ts";
import type { FaultList } from "./faultList.ts";
import { namesIn, requireKnown } from "./known.ts";
import type { WeekTables } from "./weekTables.ts";
import { requireInstant, zonesOfEvents } from "./zones.ts";

/** Orders in progress as typed, each in an order channel by someone who may post it. */
export function ordersOf(tables: WeekTables, faults: FaultList): Pick<Week, "orders"> {
  const { orders, events, eventTrucks, channels, people } = tables;
  const [eventNames, channelNames, handles] = [namesIn(events, "name"), namesIn(channels, "name"), namesIn(people, "handle")];
  const zones = zonesOfEvents(tables);
  const channelsByName = new Map(channels.rows.map(({ value }) => [value.name, value]));
  const roles = new Map(people.rows.map(({ value }) => [value.handle, value.roles]));
  const atEvent = new Set(eventTrucks.written.map(({ cells }) => JSON.stringify([cells.event, cells.truck])));
  return {
    orders: orders.rows.map((row) => {
      const { event, at, channel, by, text, kind, progress } = row.value;
      requireKnown(faults, row, "event", eventNames, events.file);
      requireKnown(faults, row, "channel", channelNames, channels.file);
      requireKnown(faults, row, "by", handles, people.file);
      const posted = channelsByName.get(channel);
      if (posted !== undefined && posted.purpose !== "orders") faults.add(row, "channel", "a channel whose purpose is orders");
      else if (posted !== undefined && !atEvent.has(JSON.stringify([event, posted.truck])))
        faults.add(row, "event", "an event the channel's truck is at");
      const ofPoster = roles.get(by);
      if (ofPoster !== undefined && !ofPoster.includes("rep") && !ofPoster.includes("lead")) faults.add(row, "by", "someone who is rep or lead");
      return { at: requireInstant(faults, row, "at", zones.get(event), at), channel, by, text, kind, progress };
    }),
  };
}
