import type { Week } from "../week.ts";
import type { FaultList } from "./faultList.ts";
import { namesIn, requireKnown, requireUnique } from "./known.ts";
import type { WeekTables } from "./weekTables.ts";

/** Trucks, people and channels, checked against each other. */
export function peopleOf({ trucks, people, channels }: WeekTables, faults: FaultList): Pick<Week, "trucks" | "people" | "channels"> {
  const truckNames = namesIn(trucks, "name");
  requireUnique(faults, trucks.rows, ["name"]);
  requireUnique(faults, people.rows, ["handle"]);
  requireUnique(faults, channels.rows, ["name"]);
  for (const row of people.rows) requireKnown(faults, row, "truck", truckNames, trucks.file);
  for (const row of channels.rows) {
    requireKnown(faults, row, "truck", truckNames, trucks.file);
    const { purpose, truck } = row.value;
    if (truck === null && (purpose === "orders" || purpose === "bench" || purpose === "week")) faults.add(row, "truck", "the truck of the channel");
  }
  return {
    trucks: trucks.rows.map(({ value }) => value),
    people: people.rows.map(({ value: { length_unit, ...person } }) => ({ ...person, lengthUnit: length_unit })),
    channels: channels.rows.map(({ value }) => value),
  };
}
