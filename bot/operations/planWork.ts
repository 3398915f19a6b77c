import { defaultAllowances } from "../../core/buildSheet/allowances.ts";
import type { GripModel, HeadModel, ShaftModel, SleeveModel, Stocked } from "../../core/buildSheet/parts.ts";
import { planService } from "../../core/buildSheet/planService.ts";
import { resolveTarget } from "../../core/buildSheet/resolveTarget.ts";
import type { ServiceKind } from "../../core/buildSheet/servicePlan.ts";
import { type ClubName, clubFamily } from "../../core/kinds.ts";
import { headBySerial } from "../../db/repositories/heads.ts";
import { modelsOf } from "../../db/repositories/partModels.ts";
import { partsInReach } from "../../db/repositories/partsInReach.ts";
import { playerById } from "../../db/repositories/people.ts";
import type { Reader } from "../../db/write.ts";
import { techniciansAt } from "./crew.ts";
import type { OrderToPlan, PlannedClub } from "./plannedClub.ts";
import { referenceOf } from "./referenceOf.ts";
import { routeOfClub, shopAt } from "./routeOfClub.ts";

/** Grips are used up club by club: the next finds what the one before leaves. */
const withoutOne = (grips: readonly Stocked<GripModel>[], taken: Stocked<GripModel>): readonly Stocked<GripModel>[] =>
  grips.map((row) => (row.placeId === taken.placeId && row.model.id === taken.model.id ? { ...row, free: row.free - 1 } : row));

/** Work on clubs that exist: each as it is on record, with what is to be done to it. */
export function planWork(reader: Reader, asked: OrderToPlan & { readonly kind: ServiceKind }): readonly PlannedClub[] {
  const { request, truckId, now, kind, replaces } = asked;
  const shop = shopAt(reader, truckId, now);
  const hand = playerById(reader, request.player)?.hand ?? "right";
  const reach = partsInReach(reader, { truckId, playerId: request.player, pastOrders: replaces === undefined ? [] : [replaces] });
  const models = {
    head: modelsOf<HeadModel>(reader, "head"),
    sleeve: modelsOf<SleeveModel>(reader, "sleeve"),
    shaft: modelsOf<ShaftModel>(reader, "shaft"),
  };
  const named = <M extends { readonly name: string }>(of: readonly M[], name: string | null | undefined): M | null =>
    of.find((model) => model.name === name) ?? null;
  let grips = reach.grips;
  const planOne = (club: ClubName): PlannedClub => {
    const reference = referenceOf(reader, request, club, truckId, now);
    const route = routeOfClub(kind, club, { plan: null, reference }, shop);
    const planned = { club, copy: 1, reference, route, plan: null, service: null, beside: {} };
    const family = clubFamily(club) ?? "iron";
    const resolved = resolveTarget({ request, club, hand, reference, family, sleeves: models.sleeve });
    if (resolved.faults.length > 0) {
      return { ...planned, faults: resolved.faults };
    }
    const head = reference?.headSerial == null ? null : headBySerial(reader, reference.headSerial);
    const result = planService({
      kind,
      club,
      hand,
      target: resolved.target,
      clauses: request.clauses,
      reference,
      head: named(models.head, reference?.headModel),
      sleeve: named(models.sleeve, reference?.sleeveModel),
      shaft: named(models.shaft, reference?.shaftModel),
      grips,
      bends: head?.bends ?? [],
      skilledTechnician: techniciansAt(reader, truckId).some(({ skills }) => skills.includes("woodBending")),
      allowances: defaultAllowances,
      note: request.note,
    });
    if (result.kind === "refused") {
      return { ...planned, faults: result.faults };
    }
    if (result.plan.kind === "regrip") {
      grips = withoutOne(grips, result.plan.grip);
    }
    return { ...planned, service: result.plan, faults: [] };
  };
  return request.clubs.map(planOne);
}
