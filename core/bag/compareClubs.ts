import { type CheckRow, checkRow, type Verdict, worstVerdict } from "./checkRow.ts";
import { type CheckTolerances, checkedQuantities } from "./checkTolerances.ts";
import type { SpecClub } from "./specClub.ts";

const namedQuantities = [
  "headModel",
  "stampedLoftDeg",
  "grind",
  "sleeveModel",
  "sleeveMark",
  "shaftModel",
  "tipTrimMm",
  "logo",
  "gripModel",
  "rib",
  "stamp",
] as const;

interface ClubComparison {
  readonly rows: readonly CheckRow[];
  /** Parts and settings known on both sides that are not the same. */
  readonly differing: readonly (typeof namedQuantities)[number][];
  /** Quantities known on one side only. */
  readonly unknown: readonly string[];
  readonly overall: Verdict | "unmeasured";
}

/**
 * How near one club is to another, such as a backup to its gamer.
 *
 * Each quantity known on both sides is compared with the tolerance of the final check; two gauge readings of ±1/8°
 * make differences of loft below 0.2° noise.
 *
 * @param gamer - the club to be like
 * @param twin - the club that should be like it
 * @param tolerances - how far is close, and what each concerns
 * @returns rows with delta = twin − gamer, parts that differ, and what only one of them has on record
 */
export function compareClubs(gamer: SpecClub, twin: SpecClub, tolerances: CheckTolerances): ClubComparison {
  const rows = checkedQuantities.flatMap((quantity) => {
    const [wanted, got] = [gamer[quantity], twin[quantity]];
    return wanted === null || got === null ? [] : [checkRow(quantity, wanted, got, tolerances)];
  });
  const differing = namedQuantities.filter((name) => gamer[name] !== null && twin[name] !== null && gamer[name] !== twin[name]);
  const unknown = [...checkedQuantities, ...namedQuantities].filter((name) => (gamer[name] === null) !== (twin[name] === null));
  return { rows, differing, unknown, overall: differing.length > 0 ? "off" : (worstVerdict(rows) ?? "unmeasured") };
}
