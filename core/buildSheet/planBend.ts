import type { BentHead } from "../head/afterBend.ts";
import { type BendForAnswer, bendFor } from "../head/bendFor.ts";
import { USUAL_BEND_HEIGHT_MM } from "../head/usualBendHeight.ts";
import { type Degrees, degrees, millimetres } from "../quantity/units.ts";
import { allowanceOf, bendFamily, faultsOfAllowance, faultsOfReach, type KnownBend } from "./bendFaults.ts";
import { knownAs, predictedClub } from "./predictedClub.ts";
import type { BendPlan, BendReadings, ServiceFault, ServiceQuestion, ServiceResult } from "./servicePlan.ts";
import { stayingFaults } from "./stayingFaults.ts";
import { writtenTarget } from "./writtenTarget.ts";

const bendReadings = ["squaredLoftDeg", "seatedLieDeg", "bounceDeg"] as const;
type BendReading = (typeof bendReadings)[number];

/** Any angles: they stand where nothing is known and nothing is wished, and what they give is not told. */
const SOME_LOFT_DEG = 45;
const SOME_LIE_DEG = 60;

const readingsFrom = (of: (reading: BendReading) => number | null): BendReadings => ({
  squaredLoftDeg: knownAs(of("squaredLoftDeg"), degrees),
  seatedLieDeg: knownAs(of("seatedLieDeg"), degrees),
  bounceDeg: knownAs(of("bounceDeg"), degrees),
});

/** How far one plane goes: nowhere where nothing is wished, unknown where the record has no start. */
function changeOf(fromDeg: Degrees | null, wishedDeg: Degrees | null): Degrees | null {
  if (wishedDeg === null) {
    return degrees(0);
  }
  return fromDeg === null ? null : degrees(wishedDeg - fromDeg);
}

/** The bend worked out; a plane without a start is taken to stand where it is wished, and a bounce then as it comes. */
function bendAnswer(question: ServiceQuestion, from: BendReadings, wished: BendReadings): BendForAnswer {
  const family = bendFamily(question);
  const bounceDeg = from.bounceDeg === null || from.squaredLoftDeg === null ? null : wished.bounceDeg;
  const head = {
    squaredLoftDeg: from.squaredLoftDeg ?? wished.squaredLoftDeg ?? degrees(SOME_LOFT_DEG),
    seatedLieDeg: from.seatedLieDeg ?? wished.seatedLieDeg ?? degrees(SOME_LIE_DEG),
    bounceDeg: from.bounceDeg ?? degrees(0),
    offsetMm: knownAs(question.reference?.offsetMm, millimetres),
    bendPointHeightMm: family === "iron" || family === "wedge" ? millimetres(USUAL_BEND_HEIGHT_MM) : null,
  };
  return bendFor(head, { ...wished, bounceDeg });
}

function afterOf(from: BendReadings, wished: BendReadings, bend: KnownBend, after: BentHead): BendReadings {
  const bounceKnown = from.bounceDeg !== null && bend.loftChangeDeg !== null;
  return {
    squaredLoftDeg: wished.squaredLoftDeg ?? from.squaredLoftDeg,
    seatedLieDeg: wished.seatedLieDeg ?? from.seatedLieDeg,
    bounceDeg: bounceKnown ? after.bounceDeg : null,
  };
}

function faultsOfWish(question: ServiceQuestion, from: BendReadings, wished: BendReadings): readonly ServiceFault[] {
  const nothingAsked = bendReadings.every((reading) => question.clauses[reading] === undefined);
  const unread = (["squaredLoftDeg", "bounceDeg"] as const).filter((reading) => from[reading] === null);
  return [
    ...(nothingAsked ? [{ code: "nothing-asked", kind: "bend" } as const] : []),
    ...(wished.bounceDeg !== null && unread.length > 0 ? [{ code: "needs-record", kind: "bend", quantities: unread } as const] : []),
    ...stayingFaults(question, bendReadings),
  ];
}

function faultsOfBounce(answer: BendForAnswer): readonly ServiceFault[] {
  if (answer.kind === "bend") {
    return [];
  }
  const { squaredLoftDeg, seatedLieDeg, bounceDeg } = answer.nearest.after;
  const { wantedBounceDeg, bounceMissDeg, loftAtWantedBounceDeg } = answer;
  const nearest = { squaredLoftDeg, seatedLieDeg, bounceDeg };
  return [{ code: "bounce-goes-with-loft", wantedBounceDeg, nearest, bounceMissDeg, loftAtWantedBounceDeg }];
}

function planned(question: ServiceQuestion, from: BendReadings, wished: BendReadings, bend: KnownBend, after: BentHead): BendPlan {
  const { club, target, clauses, reference } = question;
  const to = afterOf(from, wished, bend, after);
  const loftKnown = bend.loftChangeDeg !== null;
  return {
    kind: "bend",
    version: 1,
    club,
    target: { ...writtenTarget(target, clauses, ["bounceDeg"]), squaredLoftDeg: to.squaredLoftDeg, seatedLieDeg: to.seatedLieDeg },
    predicted: predictedClub(reference, to),
    from,
    to,
    ...bend,
    offsetChangeMm: loftKnown ? after.offsetChangeMm : null,
    offsetMm: loftKnown ? after.offsetMm : null,
    allowance: allowanceOf(question, bend),
  };
}

/** Loft and lie bent to what is written, with the bounce that comes of it. */
export function planBend(question: ServiceQuestion): ServiceResult {
  const { target, clauses, reference } = question;
  const from = readingsFrom((reading) => reference?.[reading] ?? null);
  const wished = readingsFrom((reading) => (clauses[reading] === undefined ? null : target[reading]));
  const bend: KnownBend = {
    loftChangeDeg: changeOf(from.squaredLoftDeg, wished.squaredLoftDeg),
    lieChangeDeg: changeOf(from.seatedLieDeg, wished.seatedLieDeg),
  };
  const tooFar = faultsOfReach(question, bend);
  const answer = tooFar.length > 0 ? null : bendAnswer(question, from, wished);
  const faults = [
    ...faultsOfWish(question, from, wished),
    ...tooFar,
    ...(answer === null ? [] : [...faultsOfBounce(answer), ...faultsOfAllowance(question, bend)]),
  ];
  if (answer?.kind !== "bend" || faults.length > 0) {
    return { kind: "refused", faults };
  }
  return { kind: "planned", plan: planned(question, from, wished, bend, answer.after) };
}
