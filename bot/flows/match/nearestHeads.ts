import { type CheckRow, checkRow } from "../../../core/bag/checkRow.ts";
import { type CheckTolerances, type ComparedQuantity, defaultCheckTolerances } from "../../../core/bag/checkTolerances.ts";
import { defaultGaugeErrors } from "../../../core/bag/gaugeErrors.ts";
import type { SpecClub } from "../../../core/bag/specClub.ts";
import { defaultAllowances } from "../../../core/buildSheet/allowances.ts";
import { asScrews, portsAtCentre } from "../../../core/buildSheet/chooseWeights.ts";
import type { HeadChoice, Target } from "../../../core/buildSheet/plan.ts";
import { clubFamily, type Hand } from "../../../core/kinds.ts";
import { chooseHeads } from "../../../core/selection/chooseHeads.ts";
import { type AddableMass, addableMasses } from "../../../core/selection/massReached.ts";
import { defaultSelectionTolerances, type SelectionTolerances } from "../../../core/selection/selectionTolerances.ts";
import { weightSets } from "../../../core/selection/weightSets.ts";
import type { HeadsToMatch } from "../../operations/matchFacts.ts";

/** How near is near when heads are chosen, and when a reading is held against the gamer's. */
interface MatchTolerances {
  readonly choosing: SelectionTolerances;
  readonly checking: CheckTolerances;
}

const usualTolerances: MatchTolerances = { choosing: defaultSelectionTolerances, checking: defaultCheckTolerances };

/** A bare head as it would be set, held against the gamer. */
export interface NearHead {
  readonly choice: HeadChoice;
  /** Screws that bring it nearest to the gamer's head mass; null when that is not on record. */
  readonly addedG: number | null;
  readonly rows: readonly CheckRow<ComparedQuantity>[];
}

const MOST_HEADS = 5;

/** The gamer as last left on the gauge, as a wish; nothing of what is built around a head. */
const targetOf = (gamer: SpecClub, hand: Hand, kept: Partial<Target>): Target => ({
  club: gamer.club,
  hand,
  headModel: null,
  stampedLoftDeg: null,
  squaredLoftDeg: gamer.squaredLoftDeg,
  soledFaceDeg: gamer.soledFaceDeg,
  seatedLieDeg: gamer.seatedLieDeg,
  bounceDeg: gamer.bounceDeg,
  grind: null,
  lengthMm: null,
  swingWeightPoints: null,
  totalMassG: null,
  headMassG: gamer.headMassG,
  shaft: null,
  tipTrimMm: null,
  logo: null,
  sleeveMark: null,
  grip: null,
  rib: null,
  wraps: null,
  ...kept,
});

/** Masses that the screws in this truck can add to a head. */
function screwMasses({ weights }: HeadsToMatch, { club }: SpecClub): readonly AddableMass[] {
  const family = clubFamily(club);
  return addableMasses(weightSets(asScrews(weights), portsAtCentre(family === null ? 0 : defaultAllowances.weightPorts[family])));
}

/** Two readings: the gamer's and the head's. */
function heldAgainst(choice: HeadChoice, tolerances: CheckTolerances): NearHead {
  const gauge = { readings: 2, errors: defaultGaugeErrors } as const;
  const massG = choice.deviations.find(({ quantity }) => quantity === "headMassG")?.got ?? null;
  return {
    choice,
    addedG: massG === null ? null : massG - choice.head.massG,
    rows: choice.deviations.map(({ quantity, wanted, got }) => checkRow(quantity, wanted, got, tolerances, gauge)),
  };
}

/** What is kept of the gamer, and what is given up when no such head is free. An iron of another stamp is another club. */
function wishesFor({ club, headModel, grind, stampedLoftDeg }: SpecClub): readonly Partial<Target>[] {
  const family = clubFamily(club);
  if (family === "iron" && stampedLoftDeg !== null) return [{ headModel, grind, stampedLoftDeg }, { stampedLoftDeg }];
  const byStamp = family === "wedge" ? [{ headModel, grind, stampedLoftDeg }] : [];
  return [...byStamp, { headModel, grind }, { headModel }, {}];
}

/** The heads of the first wish that any meets, the nearest first. */
function candidates(gamer: SpecClub, hand: Hand, stock: HeadsToMatch, tolerances: SelectionTolerances): readonly HeadChoice[] {
  const { headMassG } = gamer;
  const addable = screwMasses(stock, gamer);
  const choose = (kept: Partial<Target>) =>
    chooseHeads({
      target: targetOf(gamer, hand, kept),
      heads: stock.heads,
      sleeves: stock.sleeves,
      tolerances,
      massWish: () => (headMassG === null ? null : { wantedG: headMassG, addable }),
    });
  return wishesFor(gamer).reduce<readonly HeadChoice[]>((found, kept) => (found.length > 0 ? found : choose(kept)), []);
}

/**
 * The measured heads nearest to the gamer, each at its best mark, or bent where it is
 * bonded: the nearest of this truck is always among them, those
 * of this truck stand first. Five at most; none when the gamer has no angle on record to be near to.
 */
export function nearestHeads(gamer: SpecClub, hand: Hand, stock: HeadsToMatch, tolerances: MatchTolerances = usualTolerances): readonly NearHead[] {
  if (gamer.squaredLoftDeg === null && gamer.soledFaceDeg === null && gamer.seatedLieDeg === null) {
    return [];
  }
  const ranked = candidates(gamer, hand, stock, tolerances.choosing);
  const nearestHere = ranked.find(({ head }) => head.here);
  const shown = [...(nearestHere === undefined ? [] : [nearestHere]), ...ranked.filter((choice) => choice !== nearestHere)].slice(0, MOST_HEADS);
  const inOrder = ranked.filter((choice) => shown.includes(choice));
  return [...inOrder.filter(({ head }) => head.here), ...inOrder.filter(({ head }) => !head.here)].map((choice) =>
    heldAgainst(choice, tolerances.checking),
  );
}
