import type { MeasuredHead } from "../buildSheet/parts.ts";
import type { HeadChoice, Target } from "../buildSheet/plan.ts";
import { clubFamily } from "../kinds.ts";
import { finiteNumbers } from "../quantity/finiteNumbers.ts";
import { atBestSettings } from "./atBestSettings.ts";
import { checkedHeads } from "./checkedHeads.ts";
import { checkedSelectionTolerances } from "./checkedSelectionTolerances.ts";
import type { SettingQuestion } from "./headSettings.ts";

/** What is wished, and what there is to choose from. */
export interface HeadQuestion extends SettingQuestion {
  readonly heads: readonly MeasuredHead[];
}

const same = (one: number, other: number) => Math.abs(one - other) < 1e-6;

/** Heads of the right model, family, hand, grind and stamp; a wish that was not written rules nothing out. */
function isCandidate(head: MeasuredHead, target: Target): boolean {
  const family = clubFamily(target.club);
  return (
    head.hand === target.hand &&
    (target.headModel === null || head.model.name === target.headModel) &&
    (family === null || head.model.family === family) &&
    (target.grind === null || head.model.grind === target.grind) &&
    (target.stampedLoftDeg === null || same(head.stampedLoftDeg, target.stampedLoftDeg))
  );
}

/**
 * Every head of the right model, hand and stamp at its best setting, nearest to the wish first.
 *
 *     score = Σ ( (got − wanted) / tolerance )²
 *
 * over squared loft, soled face, seated lie, bounce and the head mass that swing weight needs, as far as wished. A head
 * with a sleeve is tried at every printed mark of every sleeve in reach. One without, and no driver, is bent: in the loft
 * plane, where bounce goes with the loft, and in the lie plane by what makes the sum least, as far as past bends leave
 * of the limits of material, construction and maker; past 1/8° only, which no gauge tells.
 *
 * First comes the lower band of scores; within one the preferred mark (many players refuse a turned sleeve), then the
 * fewest deviations past their tolerance, the least bend in begun half degrees, the fewest weights with lead as one more,
 * the lower score to 1e-9, the serial, the name of the sleeve, the mark. The order of the stock changes nothing. Exact:
 * the same as trying every head at every mark with every bend. Exact sleeve geometry, a real head within ±0.2°; a stamp
 * without a true loft is wished as that loft, with a sleeve at the standard mark. A bounce that was never measured
 * counts as one tolerance off. Who wants only what lies in this truck hands in only that.
 *
 * @param question - angles in degrees, masses in g
 * @returns each head that fits once, ranked, as it would be left; empty when none does
 * @throws {DomainError} `quantity-out-of-range` when a head or sleeve was recorded with an impossible value, or a tolerance is not above 0
 * @throws {DomainError} `list-of-wrong-size` when a sleeve has no mark, or a head was bent more than 200 times
 * @see fixtures/published/sleeveGeometry.json, bending.json, bendLimits.json
 */
export function chooseHeads(question: HeadQuestion): readonly HeadChoice[] {
  const { heads, ...how } = question;
  finiteNumbers(how, "question");
  checkedSelectionTolerances(how.tolerances);
  checkedHeads(heads);
  return atBestSettings(
    heads.filter((head) => isCandidate(head, how.target)),
    how,
  );
}
