import type { CheckedQuantity } from "../bag/checkTolerances.ts";
import { type ClubName, clubFamily, type OrderKind } from "../kinds.ts";

/** What a sheet itself says of its readings: those it lists, and those it has a wish or a record for. */
interface SheetReads {
  /** Of a check or a repair. */
  readonly listed: readonly CheckedQuantity[];
  readonly wanted: (quantity: CheckedQuantity) => boolean;
}

const nothingOfItsOwn: SheetReads = { listed: [], wanted: () => false };
const gripSizes: readonly CheckedQuantity[] = ["gripAt2InMm", "gripAt6InMm"];

/** The face of a wood, the lie of what is bent: irons, wedges, putters. */
function anglesOf(club: ClubName): readonly CheckedQuantity[] {
  const family = clubFamily(club);
  const isWood = family === "driver" || family === "fairway" || family === "hybrid";
  return ["squaredLoftDeg", isWood ? "soledFaceDeg" : "seatedLieDeg"];
}

/**
 * What a kind of work must be measured in, wished or not: common practice, no source. A grip is sized where a size is
 * known; a check reads what its sheet lists, a repair what was on record; a club broken in a round is taken as found.
 */
export function mustBeMeasured(kind: OrderKind, club: ClubName, { listed, wanted }: SheetReads = nothingOfItsOwn): readonly CheckedQuantity[] {
  switch (kind) {
    case "build":
    case "reshaft":
      return [...anglesOf(club), "swingWeightPoints", "lengthMm"];
    case "swap":
      return [...anglesOf(club), "swingWeightPoints"];
    case "turn":
      return ["squaredLoftDeg", "soledFaceDeg"];
    case "regrip":
      return gripSizes.filter(wanted);
    case "bend":
      return ["squaredLoftDeg", "seatedLieDeg"];
    case "grind":
      return ["bounceDeg", "headMassG"];
    case "check":
    case "repair":
      return listed;
    case "stamp":
    case "broke":
      return [];
  }
}
