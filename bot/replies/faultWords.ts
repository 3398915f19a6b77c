import type { OrderFault } from "../operations/planOrder.ts";
import { clubWords, shown } from "./shown.ts";

export const quantityWords: Readonly<Record<string, string>> = {
  headModel: "head",
  squaredLoftDeg: "loft",
  soledFaceDeg: "face",
  seatedLieDeg: "lie",
  bounceDeg: "bounce",
  lengthMm: "length",
  swingWeightPoints: "swing weight",
  totalMassG: "total",
  headMassG: "head weight",
  tipTrimMm: "tip",
  tipTrim: "tip",
  stampedLoftDeg: "stamp",
  sleeveMark: "sleeve",
};

const words = (quantities: readonly string[]): string => quantities.map((quantity) => quantityWords[quantity] ?? quantity).join(", ");

/** Why an order cannot be built as written, with what would do. */
export function faultWords(fault: OrderFault): string {
  switch (fault.code) {
    case "missing":
      return `Still needed: ${words(fault.quantities)}. Or add: like gamer`;
    case "short":
      return fault.shortages
        .map(({ part, wanted, nearest }) => `No ${part} ${wanted} free here${nearest.length === 0 ? "" : `; nearest ${nearest.join(", ")}`}`)
        .join("; ");
    case "shaft-too-short":
      return `Shaft too short: ${shown.both(fault.rawMm)} raw, ${shown.both(fault.neededMm)} needed`;
    case "tip-section-too-short":
      return `Tip ${shown.both(fault.wantedTrimMm)} is too much: at most ${shown.both(fault.allowedTrimMm)}`;
    case "taper-not-tip-trimmed":
      return "A taper tip is not tip-trimmed: leave tip out";
    case "stays-in-swap":
      return `A swap keeps ${words(fault.quantities)}: use build, or leave it out`;
    case "needs-reference":
      return `${words([fault.quantity])} leans on a club whose ${words([fault.quantity])} is not known: write the value`;
    case "out-of-range":
      return `${words([fault.quantity])} comes to ${shown.angle(fault.value)}: ${fault.min} to ${fault.max} would do`;
    case "no-reference":
      return `No ${fault.from === "order" ? "such order" : fault.from} ${clubWords(fault.club)} on record: write the values`;
  }
}
