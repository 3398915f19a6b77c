import type { Week } from "../week.ts";
import type { FaultList } from "./faultList.ts";
import { groupBy, namesIn, requireKnown, requireUnique } from "./known.ts";
import { readLocalDate } from "./localTime.ts";
import { trucksAtEvents } from "./trucksAtEvents.ts";
import type { WeekTables } from "./weekTables.ts";
import { requireInstant, zonesOfEvents } from "./zones.ts";

const MONDAY = 1;
const DAYS_PER_WEEK = 7;

/** The events with their trucks, opening hours, field and tee times, local times made instants by the event's zone. */
export function eventsOf(tables: WeekTables, faults: FaultList): Pick<Week, "events"> {
  const { events } = tables;
  requireUnique(faults, events.rows, ["name"]);
  for (const row of events.rows) {
    const monday = readLocalDate(row.value.monday) ?? 0;
    if (weekday(monday) !== MONDAY) faults.add(row, "monday", "a Monday");
    const practice = readLocalDate(row.value.first_practice_round) ?? 0;
    if (practice < monday || practice >= monday + DAYS_PER_WEEK) faults.add(row, "first_practice_round", "a day of the week that begins on monday");
  }
  const trucks = trucksAtEvents(tables, faults);
  const field = fieldsOf(tables, faults);
  const teeTimes = teeTimesOf(tables, faults);
  return {
    events: events.rows.map(({ value: { first_practice_round, walk_min, keeps_list_for_play, ...event } }) => ({
      ...event,
      firstPracticeRound: first_practice_round,
      walkMin: walk_min,
      keepsListForPlay: keeps_list_for_play,
      trucks: trucks.stays.get(event.name) ?? [],
      open: trucks.open.get(event.name) ?? [],
      field: (field.get(event.name) ?? []).map(({ player }) => player),
      teeTimes: (teeTimes.get(event.name) ?? []).map(({ event: _event, ...teeTime }) => teeTime),
    })),
  };
}

/** 1970-01-01 was a Thursday. */
const weekday = (daysSince1970: number) => (daysSince1970 + 4) % DAYS_PER_WEEK;

function fieldsOf({ events, players, field }: WeekTables, faults: FaultList) {
  const [eventNames, handles] = [namesIn(events, "name"), namesIn(players, "handle")];
  requireUnique(faults, field.rows, ["event", "player"]);
  for (const row of field.rows) {
    requireKnown(faults, row, "event", eventNames, events.file);
    requireKnown(faults, row, "player", handles, players.file);
  }
  return groupBy(
    field.rows.map(({ value }) => value),
    ({ event }) => event,
  );
}

function teeTimesOf(tables: WeekTables, faults: FaultList) {
  const { events, field, teeTimes } = tables;
  const [eventNames, zones] = [namesIn(events, "name"), zonesOfEvents(tables)];
  const inField = new Set(field.written.map(({ cells }) => JSON.stringify([cells.event, cells.player])));
  requireUnique(faults, teeTimes.rows, ["event", "player", "at"]);
  const read = teeTimes.rows.map((row) => {
    const { event, player, kind, at } = row.value;
    requireKnown(faults, row, "event", eventNames, events.file);
    if (!inField.has(JSON.stringify([event, player]))) faults.add(row, "player", `a player of the event in ${field.file}`);
    return { event, player, kind, at: requireInstant(faults, row, "at", zones.get(event), at) };
  });
  return groupBy(read, ({ event }) => event);
}
