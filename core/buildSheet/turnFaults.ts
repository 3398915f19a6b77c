import { clubFamily } from "../kinds.ts";
import type { ServiceFault, ServiceQuestion, SleeveReading } from "./servicePlan.ts";
import { stayingFaults } from "./stayingFaults.ts";

export const sleeveReadings: readonly SleeveReading[] = ["squaredLoftDeg", "soledFaceDeg", "seatedLieDeg"];

export const writtenReadings = ({ clauses }: ServiceQuestion) => sleeveReadings.filter((reading) => clauses[reading] !== undefined);

/** Which sleeve it is: none on a bonded head, and irons, wedges and putters have none unless a sleeve is known. */
function faultsOfSleeve({ club, head, sleeve }: ServiceQuestion): readonly ServiceFault[] {
  const family = clubFamily(club) ?? "driver";
  const usuallyBonded = family === "iron" || family === "wedge" || family === "putter";
  const isBonded = head === null ? sleeve === null && usuallyBonded : head.sleeveFamily === null;
  if (isBonded) {
    return [{ code: "no-sleeve", family }];
  }
  return sleeve === null ? [{ code: "sleeve-unknown" }] : [];
}

/** Which mark is meant, when one was written. */
function faultsOfMark({ sleeve, clauses, target }: ServiceQuestion): readonly ServiceFault[] {
  const mark = target.sleeveMark;
  const known = sleeve?.marks.map((printed) => printed.mark) ?? [];
  if (mark === null) {
    return clauses.sleeve === undefined ? [] : [{ code: "needs-record", kind: "turn", quantities: ["sleeve"] }];
  }
  return sleeve === null || known.includes(mark) ? [] : [{ code: "mark-unknown", mark, known }];
}

/** What a mark for a wished reading cannot be found without: where the sleeve stands, the reading there, and some loft. */
function faultsOfWish(question: ServiceQuestion, fromMark: string | null): readonly ServiceFault[] {
  const { reference, clauses } = question;
  const wished = writtenReadings(question);
  if (clauses.sleeve !== undefined || wished.length === 0) {
    return [];
  }
  const someLoft = reference?.squaredLoftDeg ?? reference?.stampedLoftDeg ?? null;
  const needed = [
    ...(fromMark === null ? (["sleeve"] as const) : []),
    ...(someLoft === null ? (["squaredLoftDeg"] as const) : []),
    ...wished.filter((reading) => (reference?.[reading] ?? null) === null),
  ];
  return needed.length === 0 ? [] : [{ code: "needs-record", kind: "turn", quantities: [...new Set(needed)] }];
}

/** What keeps a turn from being planned, from the printed mark where the sleeve stands. */
export function faultsOfTurn(question: ServiceQuestion, fromMark: string | null): readonly ServiceFault[] {
  const nothingAsked = question.clauses.sleeve === undefined && writtenReadings(question).length === 0;
  return [
    ...faultsOfSleeve(question),
    ...faultsOfMark(question),
    ...(nothingAsked ? [{ code: "nothing-asked", kind: "turn" } as const] : []),
    ...(question.sleeve === null ? [] : faultsOfWish(question, fromMark)),
    ...stayingFaults(question, ["sleeve", ...sleeveReadings]),
  ];
}
