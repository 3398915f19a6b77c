import { pointsOfMass } from "../club/massAtPosition.ts";
import { type Grams, grams, type Millimetres, MM_PER_INCH, millimetres, type SwingWeightPoints, swingWeightPoints } from "../quantity/units.ts";
import { fromStock, shortageOf } from "./fromStock.ts";
import type { GripModel, Stocked } from "./parts.ts";
import { knownAs, predictedClub } from "./predictedClub.ts";
import type { PredictedClub, RegripPlan, ServiceFault, ServiceQuestion, ServiceResult } from "./servicePlan.ts";
import { stayingFaults } from "./stayingFaults.ts";
import { writtenTarget } from "./writtenTarget.ts";

/** Core and butt farther apart than a grip's own tolerance of size, 0.010 in. Common practice, no source. */
const CORE_TOLERANCE_MM = 0.01 * MM_PER_INCH;
const SLACK_MM = 1e-9;

interface MassMoved {
  readonly massG: Grams;
  readonly points: SwingWeightPoints;
}

/** The grip on the club, when some model of its name is known; with or without a rib as it has one. */
function oldGrip({ reference, grips }: ServiceQuestion): GripModel | null {
  const named = grips.map(({ model }) => model).filter(({ name }) => name === reference?.gripModel);
  return named.find(({ rib }) => rib === reference?.rib) ?? named[0] ?? null;
}

/** What grip and wraps weigh, new less old, and what that does to the swing weight. */
function massMoved(question: ServiceQuestion, grip: GripModel, wraps: number): MassMoved | null {
  const { reference, allowances } = question;
  const old = oldGrip(question);
  const oldWraps = reference?.wraps ?? null;
  if (old === null || oldWraps === null) {
    return null;
  }
  const tapeG = grams((wraps - oldWraps) * allowances.wrapG);
  const ofGrip = ({ massG, centreFromCapMm }: GripModel) => pointsOfMass(massG, centreFromCapMm);
  return {
    massG: grams(grip.massG - old.massG + tapeG),
    points: swingWeightPoints(ofGrip(grip) - ofGrip(old) + pointsOfMass(tapeG, millimetres(allowances.tapeFromCapMm))),
  };
}

/** The sizes on record hold for the same grip over the same tape only. */
function sizes({ reference }: ServiceQuestion, grip: GripModel, wraps: number): Pick<PredictedClub, "gripAt2InMm" | "gripAt6InMm"> {
  const alike = reference?.gripModel === grip.name && reference.wraps === wraps;
  const size = (value: number | null | undefined): Millimetres | null => (alike ? knownAs(value, millimetres) : null);
  return { gripAt2InMm: size(reference?.gripAt2InMm), gripAt6InMm: size(reference?.gripAt6InMm) };
}

function predicted(question: ServiceQuestion, grip: GripModel, wraps: number, moved: MassMoved | null): PredictedClub {
  const { reference } = question;
  const standing = predictedClub(reference);
  const { totalMassG, swingWeightPoints: points } = standing;
  return {
    ...standing,
    ...sizes(question, grip, wraps),
    wraps,
    totalMassG: totalMassG === null || moved === null ? null : grams(totalMassG + moved.massG),
    swingWeightPoints: points === null || moved === null ? null : swingWeightPoints(points + moved.points),
  };
}

function planned(question: ServiceQuestion, grip: Stocked<GripModel>): RegripPlan {
  const { club, target, clauses, shaft } = question;
  const { model } = grip;
  const wraps = target.wraps ?? 0;
  const moved = massMoved(question, model, wraps);
  const buttOverCoreMm = shaft === null ? null : millimetres(shaft.buttDiameterMm - model.coreMm);
  return {
    kind: "regrip",
    version: 1,
    club,
    target: { ...writtenTarget(target, clauses, ["totalMassG", "swingWeightPoints"]), rib: model.rib, wraps },
    predicted: predicted(question, model, wraps, moved),
    grip,
    wraps,
    rib: model.rib,
    logo: target.logo,
    massChangeG: moved?.massG ?? null,
    swingWeightChangePoints: moved?.points ?? null,
    buttOverCoreMm,
    coreMismatch: buttOverCoreMm === null ? null : Math.abs(buttOverCoreMm) > CORE_TOLERANCE_MM + SLACK_MM,
  };
}

/** A new grip, the one on record unless another is written, from the player's bin first. */
export function planRegrip(question: ServiceQuestion): ServiceResult {
  const { target } = question;
  const suitable = question.grips.filter(({ model }) => target.rib === null || model.rib === target.rib);
  const grip = target.grip === null ? null : fromStock(suitable, target.grip);
  const faults: readonly ServiceFault[] = [
    ...(target.grip === null ? [{ code: "needs-record", kind: "regrip", quantities: ["grip"] } as const] : []),
    ...(target.grip !== null && grip === null ? [{ code: "short", shortages: [shortageOf("grip", target.grip, suitable)] } as const] : []),
    ...stayingFaults(question, ["grip", "rib", "wraps", "logo"]),
  ];
  return grip === null || faults.length > 0 ? { kind: "refused", faults } : { kind: "planned", plan: planned(question, grip) };
}
