import type { SpecClub } from "../../../core/bag/specClub.ts";
import type { Week } from "../week.ts";
import type { FaultList } from "./faultList.ts";
import { groupBy, namesIn, requireKnown, requireUnique } from "./known.ts";
import type { ReadRow } from "./readTable.ts";
import { specClubsOf, versionKey } from "./specClubsOf.ts";
import type { WeekTables } from "./weekTables.ts";
import { requireInstant } from "./zones.ts";

const MOST_CLUBS = 14;

/** The published versions of every player's bag, each with its clubs and backups. */
export function specsOf(tables: WeekTables, faults: FaultList): Pick<Week, "specs"> {
  const { specVersions: versions, players, people, events } = tables;
  const [handles, posters, eventNames] = [namesIn(players, "handle"), namesIn(people, "handle"), namesIn(events, "name")];
  requireUnique(faults, versions.rows, ["player", "version"]);
  const clubsByVersion = groupBy(specClubsOf(tables, faults), ({ row }) => versionKey(row.cells));
  const specs = versions.rows.map((row) => {
    requireKnown(faults, row, "player", handles, players.file);
    requireKnown(faults, row, "by", posters, people.file);
    requireKnown(faults, row, "event", eventNames, events.file);
    const clubs = clubsByVersion.get(versionKey(row.cells)) ?? [];
    const inBag = clubs.filter(({ set }) => set === "bag");
    if (inBag.length > MOST_CLUBS) faults.add(row, "version", `at most ${MOST_CLUBS} clubs in the bag, not ${inBag.length}`);
    const { player, version, valid_from, zone, by, event, where } = row.value;
    const validFrom = requireInstant(faults, row, "valid_from", zone, valid_from);
    const backups: readonly SpecClub[] = clubs.filter(({ set }) => set === "backup").map(({ club }) => club);
    return {
      row,
      spec: { player, version, validFrom, by, event, where, bag: { version: 1 as const, clubs: inBag.map(({ club }) => club), backups } },
    };
  });
  for (const ofPlayer of groupBy(specs, ({ spec }) => spec.player).values()) requireInTurn(faults, ofPlayer);
  return { specs: specs.map(({ spec }) => spec) };
}

/** Requires versions to count 1, 2, 3 … and each to be valid later than the one before. */
function requireInTurn(faults: FaultList, ofPlayer: readonly { readonly row: ReadRow<unknown>; readonly spec: Week["specs"][number] }[]): void {
  const inOrder = ofPlayer.toSorted((one, other) => one.spec.version - other.spec.version);
  for (const [at, { row, spec }] of inOrder.entries()) {
    if (spec.version !== at + 1) faults.add(row, "version", `${at + 1}: versions count 1, 2, 3 and so on`);
    const before = inOrder[at - 1];
    if (before !== undefined && spec.validFrom <= before.spec.validFrom)
      faults.add(row, "valid_from", `a time after that of version ${before.spec.version}`);
  }
}
