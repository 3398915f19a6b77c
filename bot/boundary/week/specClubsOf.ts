import type { SpecClub } from "../../../core/bag/specClub.ts";
import { clubFamily, type Instant } from "../../../core/kinds.ts";
import { rangeOf } from "../quantityRanges.ts";
import type { FaultList } from "./faultList.ts";
import { namesIn, requireKnown, requireUnique } from "./known.ts";
import type { ReadRow, ReadTable } from "./readTable.ts";
import type { WeekTables } from "./weekTables.ts";
import { requireInstant } from "./zones.ts";

type SpecClubValue = WeekTables["specClubs"] extends ReadTable<infer Value> ? Value : never;
type SpecClubRow = ReadRow<SpecClubValue>;

interface ReadSpecClub {
  readonly row: SpecClubRow;
  readonly set: "bag" | "backup";
  readonly club: SpecClub;
}

/** The clubs of all bags and backups, each part and mark known, each of a version that is listed. */
export function specClubsOf(tables: WeekTables, faults: FaultList): readonly ReadSpecClub[] {
  const { specClubs, specVersions } = tables;
  const zones = new Map(specVersions.rows.map(({ cells, value }) => [versionKey(cells), value.zone]));
  const listed = new Set(specVersions.written.map(({ cells }) => versionKey(cells)));
  requireUnique(
    faults,
    specClubs.rows.filter(({ value }) => value.set === "bag"),
    ["player", "version", "club"],
  );
  requireParts(tables, faults);
  requireHeads(tables, faults);
  return specClubs.rows.map((row) => {
    if (!listed.has(versionKey(row.cells))) faults.add(row, "version", `a version of the player in ${specVersions.file}`);
    const zone = zones.get(versionKey(row.cells));
    const measured = row.value.measured_at;
    const measuredAt = measured === null ? null : requireInstant(faults, row, "measured_at", zone, measured);
    return { row, set: row.value.set, club: specClubOf(row.value, measuredAt) };
  });
}

/** One version of one player, as both files of specs write it. */
export const versionKey = (cells: ReadRow<unknown>["cells"]) => JSON.stringify([cells.player, Number(cells.version)]);

function requireParts(tables: WeekTables, faults: FaultList): void {
  const { specClubs, sleeves, sleeveMarks, shafts, grips, heads } = tables;
  const [sleeveNames, shaftNames, gripNames] = [namesIn(sleeves, "name"), namesIn(shafts, "name"), namesIn(grips, "name")];
  const inDrawers = namesIn(heads, "serial");
  const marks = new Set(sleeveMarks.written.map(({ cells }) => JSON.stringify([cells.sleeve, cells.mark])));
  for (const row of specClubs.rows) {
    requireKnown(faults, row, "sleeve_model", sleeveNames, sleeves.file);
    requireKnown(faults, row, "shaft_model", shaftNames, shafts.file);
    requireKnown(faults, row, "grip_model", gripNames, grips.file);
    const { sleeve_model: sleeve, sleeve_mark: mark, head_serial: serial } = row.value;
    if ((sleeve === null) !== (mark === null)) faults.add(row, "sleeve_mark", "a mark where there is a sleeve, and only there");
    else if (sleeve !== null && sleeveNames.has(sleeve) && !marks.has(JSON.stringify([sleeve, mark]))) {
      faults.add(row, "sleeve_mark", `a mark of ${sleeve} in ${sleeveMarks.file}`);
    }
    if (serial !== null && inDrawers.has(serial)) faults.add(row, "head_serial", `a head that is not also in ${heads.file}`);
  }
}

function requireHeads({ headModels, specClubs }: WeekTables, faults: FaultList): void {
  const names = namesIn(headModels, "name");
  const families = new Map(headModels.rows.map(({ value }) => [value.name, value.family]));
  for (const row of specClubs.rows) {
    const { club, outside, head_model: model, squared_loft_deg: loft } = row.value;
    if (outside && model !== null) faults.add(row, "head_model", "nothing: an outside club has no model of ours");
    if (!outside && model === null) faults.add(row, "head_model", `a name in ${headModels.file}`);
    requireKnown(faults, row, "head_model", names, headModels.file);
    const family = clubFamily(club);
    const ofModel = model === null ? undefined : families.get(model);
    if (ofModel !== undefined && ofModel !== family) faults.add(row, "head_model", `a ${family} head for a ${club}`);
    const range = rangeOf("squaredLoftDeg", family);
    if (loft !== null && (loft < range.min || loft > range.max)) faults.add(row, "squared_loft_deg", `${range.accepted} deg`);
  }
}

function specClubOf(value: SpecClubValue, measuredAt: Instant | null): SpecClub {
  return {
    club: value.club,
    outside: value.outside,
    headModel: value.head_model,
    headSerial: value.head_serial,
    stampedLoftDeg: value.stamped_loft_deg,
    squaredLoftDeg: value.squared_loft_deg,
    soledFaceDeg: value.soled_face_deg,
    seatedLieDeg: value.seated_lie_deg,
    bounceDeg: value.bounce_deg,
    grind: value.grind,
    sleeveModel: value.sleeve_model,
    sleeveMark: value.sleeve_mark,
    lengthMm: value.length_mm,
    swingWeightPoints: value.swing_weight_points,
    totalMassG: value.total_mass_g,
    headMassG: value.head_mass_g,
    shaftModel: value.shaft_model,
    tipTrimMm: value.tip_trim_mm,
    logo: value.logo,
    gripModel: value.grip_model,
    rib: value.rib,
    wraps: value.wraps,
    stamp: value.stamp,
    note: value.note,
    measuredAt,
    gauge: value.gauge,
  };
}
