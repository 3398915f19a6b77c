import { defaultGaugeErrors, type GaugeErrors } from "../bag/gaugeErrors.ts";
import type { Deviation, GivenUp, HeadChoice } from "../buildSheet/plan.ts";
import { degrees } from "../quantity/units.ts";
import { bentDeg } from "./bentDeg.ts";

const deviationOf = ({ deviations }: HeadChoice, quantity: Deviation["quantity"]): Deviation | undefined =>
  deviations.find((deviation) => deviation.quantity === quantity);

const off = ({ wanted, got }: Deviation): number => Math.abs(got - wanted);

/** What another head gives up against the one chosen: whatever is worse by more than the gauge can tell. Empty where nothing is. */
export function givenUp(best: HeadChoice, other: HeadChoice, errors: GaugeErrors = defaultGaugeErrors): readonly GivenUp[] {
  const further = other.deviations.flatMap((deviation): readonly GivenUp[] => {
    const { quantity } = deviation;
    const against = deviationOf(best, quantity);
    const worseBy = against === undefined ? 0 : off(deviation) - off(against);
    return worseBy > errors[quantity].error + 1e-9 ? [{ code: "further", quantity, worseBy }] : [];
  });
  const isBounceUnknown = deviationOf(best, "bounceDeg") !== undefined && other.bounceDeg === null;
  const moreDeg = degrees(bentDeg(other) - bentDeg(best));
  const moreCount = other.addedCount - best.addedCount;
  return [
    ...further,
    ...(isBounceUnknown ? [{ code: "bounce-unknown" } as const] : []),
    ...(best.atPreferredMark && !other.atPreferredMark && other.mark !== null ? [{ code: "turned-sleeve", mark: other.mark } as const] : []),
    ...(moreDeg > 1e-9 ? [{ code: "more-bend", deg: moreDeg } as const] : []),
    ...(moreCount > 0 ? [{ code: "more-weights", count: moreCount } as const] : []),
    ...(best.head.here && !other.head.here ? [{ code: "elsewhere", place: other.head.place } as const] : []),
  ];
}
