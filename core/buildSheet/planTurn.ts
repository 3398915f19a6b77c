import type { BareHead } from "../head/attitudeOf.ts";
import { bareHeadOf } from "../head/bareHeadOf.ts";
import { graphicsAfterTurn } from "../head/graphicsAfterTurn.ts";
import { type AttitudeWish, nearestMark } from "../head/nearestMark.ts";
import { turnOfShaft } from "../head/turnOfShaft.ts";
import { type Degrees, degrees } from "../quantity/units.ts";
import type { SleeveModel } from "./parts.ts";
import type { Deviation } from "./plan.ts";
import { knownAs, predictedClub } from "./predictedClub.ts";
import type { ServiceQuestion, ServiceResult, SleeveReading, SleeveReadings, TurnPlan } from "./servicePlan.ts";
import { faultsOfTurn, sleeveReadings, writtenReadings } from "./turnFaults.ts";
import { writtenTarget } from "./writtenTarget.ts";

type RankedMark = ReturnType<typeof nearestMark>[number];

/** A usual wood's, where no lie is on record: a change by the sleeve hardly depends on it. */
const USUAL_LIE_DEG = 58;

const readingsFrom = (of: (reading: SleeveReading) => number | null): SleeveReadings => ({
  squaredLoftDeg: knownAs(of("squaredLoftDeg"), degrees),
  soledFaceDeg: knownAs(of("soledFaceDeg"), degrees),
  seatedLieDeg: knownAs(of("seatedLieDeg"), degrees),
});

/** The head brought back to bare from what the record has of it; null where the mark it was read at or its loft is unknown. */
function bareHead({ reference, hand }: ServiceQuestion, sleeve: SleeveModel, fromMark: string | null): BareHead | null {
  const clockDeg = sleeve.marks.find(({ mark }) => mark === fromMark)?.clockDeg;
  const loftDeg = reference?.squaredLoftDeg ?? reference?.stampedLoftDeg ?? null;
  if (clockDeg === undefined || loftDeg === null) {
    return null;
  }
  const reads = {
    squaredLoftDeg: degrees(loftDeg),
    soledFaceDeg: degrees(reference?.soledFaceDeg ?? 0),
    seatedLieDeg: degrees(reference?.seatedLieDeg ?? USUAL_LIE_DEG),
  };
  return bareHeadOf(reads, { tiltDeg: sleeve.tiltDeg, clockDeg }, hand);
}

/** The wished readings the record has a start for. */
function wishOf(question: ServiceQuestion, before: SleeveReadings): AttitudeWish {
  const wished = writtenReadings(question).flatMap((reading): readonly (readonly [SleeveReading, Degrees])[] => {
    const wanted = question.target[reading];
    return wanted === null || before[reading] === null ? [] : [[reading, degrees(wanted)]];
  });
  return Object.fromEntries(wished);
}

const missesOf = (row: RankedMark | undefined): readonly Deviation[] =>
  (row?.misses ?? []).map(({ reading, wantedDeg, gotDeg, toleranceDeg }) => ({
    quantity: reading,
    wanted: wantedDeg,
    got: gotDeg,
    tolerance: toleranceDeg,
  }));

function gripTurnsWrong(rib: boolean | null, turnDeg: number | null): boolean | null {
  if (rib === false || turnDeg === 0) {
    return false;
  }
  return turnDeg === null ? null : rib;
}

interface Turn {
  readonly sleeve: SleeveModel;
  readonly fromMark: string | null;
  readonly toMark: string;
  readonly before: SleeveReadings;
  readonly ranked: readonly RankedMark[];
}

function planned(question: ServiceQuestion, { sleeve, fromMark, toMark, before, ranked }: Turn): TurnPlan {
  const { club, hand, target, clauses, reference } = question;
  const [from, to] = [fromMark, toMark].map((wanted) => ranked.find(({ mark }) => mark === wanted));
  const change = readingsFrom((reading) => (from === undefined || to === undefined ? null : to.attitude[reading] - from.attitude[reading]));
  const after = readingsFrom((reading) => {
    const [read, changed] = [before[reading], change[reading]];
    return read === null || changed === null ? null : read + changed;
  });
  const turn = fromMark === null ? null : turnOfShaft(fromMark, toMark, sleeve, hand);
  const logoBefore = reference?.logo ?? null;
  const turned = logoBefore === null || turn === null ? null : { logo: logoBefore, ribClockDeg: null, spineClockDeg: null };
  return {
    kind: "turn",
    version: 1,
    club,
    target: { ...writtenTarget(target, clauses, sleeveReadings), sleeveMark: toMark },
    predicted: predictedClub(reference, after),
    sleeve,
    fromMark,
    toMark,
    before,
    after,
    change,
    shaftTurnDeg: turn?.fromButtDeg ?? null,
    logoBefore,
    logoAfter: turned === null || turn === null ? null : graphicsAfterTurn(turned, turn.onClockDeg).logo,
    gripTurnsWrong: gripTurnsWrong(reference?.rib ?? null, turn?.fromButtDeg ?? null),
    turnedFromStandard: toMark !== sleeve.standardMark,
    misses: missesOf(to),
  };
}

/** A sleeve turned to a mark as written, or to the one nearest to a wished loft, face or lie. */
export function planTurn(question: ServiceQuestion): ServiceResult {
  const { sleeve, reference, target } = question;
  const fromMark = sleeve?.marks.find(({ mark }) => mark === reference?.sleeveMark)?.mark ?? null;
  const faults = faultsOfTurn(question, fromMark);
  const before = readingsFrom((reading) => reference?.[reading] ?? null);
  const bare = sleeve === null ? null : bareHead(question, sleeve, fromMark);
  const ranked = bare === null || sleeve === null ? [] : nearestMark(bare, sleeve, wishOf(question, before));
  const toMark = target.sleeveMark ?? ranked[0]?.mark;
  if (sleeve === null || toMark === undefined || faults.length > 0) {
    return { kind: "refused", faults };
  }
  if (toMark === fromMark) {
    return { kind: "refused", faults: [{ code: "already-there", mark: toMark, misses: missesOf(ranked.find(({ mark }) => mark === toMark)) }] };
  }
  return { kind: "planned", plan: planned(question, { sleeve, fromMark, toMark, before, ranked }) };
}
