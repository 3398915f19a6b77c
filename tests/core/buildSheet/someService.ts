import type { SpecClub } from "../../../core/bag/specClub.ts";
import { defaultAllowances } from "../../../core/buildSheet/allowances.ts";
import type { Amount, Clauses, Wish } from "../../../core/buildSheet/buildRequest.ts";
import { planService } from "../../../core/buildSheet/planService.ts";
import { resolveTarget } from "../../../core/buildSheet/resolveTarget.ts";
import type { ServiceFault, ServiceKind, ServicePlan, ServiceQuestion } from "../../../core/buildSheet/servicePlan.ts";
import { type ClubName, clubFamily, type Hand } from "../../../core/kinds.ts";
import { someClub, someHeadModel, someSleeve } from "./someParts.ts";

export const wish = <T>(value: T): Wish<T> => ({ value, asWritten: "as written" });
export const exactly = (value: number) => wish<Amount>({ kind: "exactly", value });
export const by = (value: number) => wish<Amount>({ kind: "by", value });
export const same = wish<Amount>({ kind: "same" });
export const mark = (name: string): NonNullable<Clauses["sleeve"]> => wish({ kind: "mark", mark: name });
export const turned = (marks: number): NonNullable<Clauses["sleeve"]> => wish({ kind: "turn", marks });

/** A club on record with nothing known but its name and what a test gives. */
export const bareClub = (club: string, given: Partial<SpecClub> = {}): SpecClub => {
  const nothing = Object.fromEntries(Object.keys(someClub({})).map((key) => [key, null]));
  return { ...(nothing as unknown as SpecClub), outside: false, ...given, club: club as ClubName };
};

export const someWedge = (given: Partial<SpecClub> = {}): SpecClub =>
  bareClub("sw", { headModel: "Tarn Full", stampedLoftDeg: 56, squaredLoftDeg: 56, seatedLieDeg: 64, bounceDeg: 10, grind: "full", ...given });

interface Asked extends Partial<Omit<ServiceQuestion, "kind" | "target">> {
  readonly club?: ClubName;
  readonly hand?: Hand;
}

/** A question as the bot asks it: the target resolved from the clauses and the club on record. */
export function serviceQuestion(kind: ServiceKind, clauses: Clauses, asked: Asked = {}): ServiceQuestion {
  const reference = asked.reference === undefined ? someClub({}) : asked.reference;
  const club = asked.club ?? reference?.club ?? ("driver" as ClubName);
  const family = clubFamily(club) ?? "driver";
  const isWood = family === "driver" || family === "fairway";
  const sleeve = asked.sleeve === undefined ? (isWood ? someSleeve({}) : null) : asked.sleeve;
  const hand = asked.hand ?? "right";
  const known = { request: { clauses }, club, hand, reference, family, sleeves: sleeve === null ? [] : [sleeve] };
  return {
    kind,
    club,
    hand,
    target: resolveTarget(known).target,
    clauses,
    reference,
    head: isWood ? someHeadModel({ family }) : null,
    sleeve,
    shaft: null,
    grips: [],
    bends: [],
    skilledTechnician: false,
    allowances: defaultAllowances,
    note: null,
    ...Object.fromEntries(Object.entries(asked).filter(([key]) => key !== "sleeve" && key !== "reference" && key !== "club" && key !== "hand")),
  };
}

/** The plan of one kind, or an error that names the faults. */
export function plannedAs<K extends ServiceKind>(kind: K, clauses: Clauses, asked: Asked = {}): Extract<ServicePlan, { kind: K }> {
  const result = planService(serviceQuestion(kind, clauses, asked));
  if (result.kind === "refused" || result.plan.kind !== kind) {
    throw new Error(`no plan: ${JSON.stringify(result)}`);
  }
  return result.plan as Extract<ServicePlan, { kind: K }>;
}

/** Why there is none; empty when there is one. */
export function faultsOf(kind: ServiceKind, clauses: Clauses, asked: Asked = {}): readonly ServiceFault[] {
  const result = planService(serviceQuestion(kind, clauses, asked));
  return result.kind === "refused" ? result.faults : [];
}
