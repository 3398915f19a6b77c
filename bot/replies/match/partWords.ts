import type { ClubComparison } from "../../../core/bag/compareClubs.ts";
import type { SpecClub } from "../../../core/bag/specClub.ts";
import { lengthWords } from "../calc/calcNumbers.ts";
import { shown } from "../shown.ts";

type NamedPart = ClubComparison["differing"][number];
type LengthUnit = "in" | "mm";

/** How a part or setting is told to people. */
interface PartWords {
  readonly name: string;
  readonly value: (club: SpecClub, unit: LengthUnit) => string;
}

const told = (name: string, value: PartWords["value"]): PartWords => ({ name, value });

export const partWords: Readonly<Record<NamedPart, PartWords>> = {
  headModel: told("head", ({ headModel }) => headModel ?? "unknown"),
  stampedLoftDeg: told("stamped", ({ stampedLoftDeg }) => (stampedLoftDeg === null ? "unknown" : shown.stamp(stampedLoftDeg))),
  grind: told("grind", ({ grind }) => grind ?? "unknown"),
  sleeveModel: told("sleeve", ({ sleeveModel }) => sleeveModel ?? "unknown"),
  sleeveMark: told("sleeve at", ({ sleeveMark }) => sleeveMark ?? "unknown"),
  shaftModel: told("shaft", ({ shaftModel }) => shaftModel ?? "unknown"),
  tipTrimMm: told("tip", ({ tipTrimMm }, unit) => (tipTrimMm === null ? "unknown" : tipTrimMm === 0 ? "untrimmed" : lengthWords(tipTrimMm, unit))),
  logo: told("logo", ({ logo }) => logo ?? "unknown"),
  gripModel: told("grip", ({ gripModel }) => gripModel ?? "unknown"),
  rib: told("rib", ({ rib }) => (rib === null ? "unknown" : rib ? "yes" : "none")),
  stamp: told("stamped text", ({ stamp }) => stamp ?? "none"),
};
