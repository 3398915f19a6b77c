import type { MeasuredHead, SleeveModel } from "../buildSheet/parts.ts";
import type { Deviation, HeadChoice, Target } from "../buildSheet/plan.ts";
import type { Attitude } from "../head/attitude.ts";
import { bondedAttitude } from "../head/attitudeOf.ts";
import { sleeveChart } from "../head/sleeveChart.ts";
import { clubFamily } from "../kinds.ts";
import { finiteNumbers } from "../quantity/finiteNumbers.ts";
import { inRange } from "../quantity/inRange.ts";
import { checkedSelectionTolerances } from "./checkedSelectionTolerances.ts";
import { headDeviations, type MassReached, type MassWish, massReached } from "./headDeviations.ts";
import type { SelectionTolerances } from "./selectionTolerances.ts";

/** What is wished, and what there is to choose from. */
export interface HeadQuestion {
  readonly target: Target;
  readonly heads: readonly MeasuredHead[];
  readonly sleeves: readonly SleeveModel[];
  readonly tolerances: SelectionTolerances;
  /** The mark that wins among equals; left out, each sleeve's standard mark. */
  readonly preferredMark?: string | null;
  /** The head mass that swing weight needs, with the weights in stock; null where nothing is wished. */
  readonly massWish?: (head: MeasuredHead, sleeve: SleeveModel | null) => MassWish | null;
}

interface Setting {
  readonly sleeve: SleeveModel | null;
  readonly mark: string | null;
  readonly attitude: Attitude;
  readonly standardLoftDeg: number;
  readonly preferred: boolean;
  readonly mass: MassReached | null;
}

interface Ranked {
  readonly choice: HeadChoice;
  readonly preferred: boolean;
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

function massOf(head: MeasuredHead, sleeve: SleeveModel | null, question: HeadQuestion): MassReached | null {
  const wish = question.massWish?.(head, sleeve) ?? null;
  return wish === null ? null : massReached(head.massG, wish, question.tolerances.headMassG);
}

/** Every way the head may be set. With nothing wished that a sleeve could change, only the preferred mark. */
function settingsOf(head: MeasuredHead, question: HeadQuestion): readonly Setting[] {
  const { target, sleeves } = question;
  if (head.model.sleeveFamily === null) {
    const attitude = bondedAttitude(head);
    const bonded = {
      sleeve: null,
      mark: null,
      attitude,
      standardLoftDeg: attitude.squaredLoftDeg,
      preferred: true,
      mass: massOf(head, null, question),
    };
    return target.sleeveMark === null ? [bonded] : [];
  }
  const sleeveMatters = target.sleeveMark !== null || target.squaredLoftDeg !== null || target.soledFaceDeg !== null || target.seatedLieDeg !== null;
  return sleeves
    .filter((sleeve) => sleeve.family === head.model.sleeveFamily)
    .flatMap((sleeve) => {
      const preferredMark = question.preferredMark ?? sleeve.standardMark;
      const chart = sleeveChart(head, sleeve);
      const mass = massOf(head, sleeve, question);
      const standardLoftDeg = chart.find(({ mark }) => mark === sleeve.standardMark)?.attitude.squaredLoftDeg ?? head.soledLoftDeg;
      return chart
        .filter(({ mark }) => (sleeveMatters ? target.sleeveMark === null || mark === target.sleeveMark : mark === preferredMark))
        .map(({ mark, attitude }) => ({ sleeve, mark, attitude, standardLoftDeg, preferred: mark === preferredMark, mass }));
    });
}

/** What a sleeve chart does not look at. */
function checkedHead({ massG, bounceDeg, serial }: MeasuredHead): void {
  inRange(massG, { field: `head ${serial} massG`, unit: "g", min: 50, max: 1000 });
  inRange(bounceDeg ?? 0, { field: `head ${serial} bounceDeg`, unit: "deg", min: -10, max: 30 });
}

const inTolerances = ({ wanted, got, tolerance }: Deviation) => (got - wanted) / tolerance;

function rankedChoice(head: MeasuredHead, setting: Setting, question: HeadQuestion): Ranked {
  const deviations = headDeviations(question.target, { head, ...setting }, setting.mass, question.tolerances);
  /** A bounce that was wished and never measured counts as one tolerance off. */
  const unknownBounce = question.target.bounceDeg !== null && head.bounceDeg === null ? 1 : 0;
  const { sleeve, mark, attitude, preferred } = setting;
  const score = deviations.reduce((total, deviation) => total + inTolerances(deviation) ** 2, unknownBounce);
  const misses = deviations.filter((deviation) => Math.abs(inTolerances(deviation)) > 1 + 1e-9);
  return { preferred, choice: { head, sleeve, mark, attitude, score, misses } };
}

const byText = (one: string, other: string) => (one < other ? -1 : one > other ? 1 : 0);

/**
 * Every head of the right model, hand and stamp at every printed mark, nearest to the wish first.
 *
 *     score = Σ ( (got − wanted) / tolerance )²
 *
 * over squared loft, soled face, seated lie, bounce and the head mass that swing weight needs, as far as wished.
 * Within one band of scores the standard mark comes first (many players refuse a turned sleeve), then fewest
 * deviations past their tolerance, then the lower score, then the serial. The order of the stock changes nothing.
 * Exact sleeve geometry; a stamp without a true loft is wished as that loft at the standard mark.
 *
 * @param question - angles in degrees, masses in g
 * @returns all choices, ranked; empty when no head fits
 * @throws {DomainError} `quantity-out-of-range` when a head or sleeve was recorded with an impossible value, or a tolerance is not above 0
 */
export function chooseHeads(question: HeadQuestion): readonly HeadChoice[] {
  finiteNumbers(question, "question");
  checkedSelectionTolerances(question.tolerances);
  question.heads.forEach(checkedHead);
  const band = ({ choice }: Ranked) => Math.floor(choice.score / question.tolerances.scoreBand + 1e-9);
  return question.heads
    .filter((head) => isCandidate(head, question.target))
    .flatMap((head) => settingsOf(head, question).map((setting) => rankedChoice(head, setting, question)))
    .sort(
      (one, other) =>
        band(one) - band(other) ||
        Number(other.preferred) - Number(one.preferred) ||
        one.choice.misses.length - other.choice.misses.length ||
        one.choice.score - other.choice.score ||
        byText(one.choice.head.serial, other.choice.head.serial) ||
        byText(one.choice.sleeve?.name ?? "", other.choice.sleeve?.name ?? "") ||
        byText(one.choice.mark ?? "", other.choice.mark ?? ""),
    )
    .map(({ choice }) => choice);
}
