import type { SpecClub } from "../../../core/bag/specClub.ts";
import type { ShaftMarkings } from "../../../core/head/graphicsAfterTurn.ts";
import { degrees } from "../../../core/quantity/units.ts";
import { assumed, onRecord, type Understood } from "../../boundary/calc/fields.ts";
import type { SleeveWords } from "../../boundary/calc/readSleeve.ts";

const UP_DEG = degrees(90);
const DOWN_DEG = degrees(270);

/** Where logo and rib are as the sleeve stands: as written, as on record, else both down. */
export function sleeveMarkings(
  { values }: SleeveWords,
  club: SpecClub | null,
): { readonly markings: ShaftMarkings; readonly assumed: readonly Understood[] } {
  const recordedRib = club?.rib == null ? null : club.rib ? "down" : "none";
  const logo = values.logo ?? club?.logo ?? "down";
  const rib = values.rib ?? recordedRib ?? "down";
  const input = (name: "logo" | "rib", value: string, recorded: string | null): readonly Understood[] => {
    if (values[name] !== undefined) return [];
    return [recorded === null ? assumed(name, value, "") : onRecord(name, value, "")];
  };
  return {
    markings: { logo, ribClockDeg: rib === "none" ? null : rib === "up" ? UP_DEG : DOWN_DEG, spineClockDeg: null },
    assumed: [...input("logo", logo, club?.logo ?? null), ...input("rib", rib, recordedRib)],
  };
}
