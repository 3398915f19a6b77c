import type { ClubPlan } from "../../core/buildSheet/plan.ts";
import type { Id } from "../../core/kinds.ts";
import type { SheetPlan } from "../../db/repositories/sheetPlan.ts";

/** Something a sheet takes from stock. A counted part without a place is taken wherever one is free. */
export type PartTaken =
  | { readonly kind: "head"; readonly id: Id<"head">; readonly name: string }
  | { readonly kind: "piece"; readonly id: Id<"shaftPiece">; readonly name: string }
  | {
      readonly kind: "counted";
      readonly modelId: Id<"partModel">;
      readonly placeId: Id<"place"> | null;
      readonly quantity: number;
      readonly name: string;
    };

type Stocked = { readonly model: { readonly id: Id<"partModel">; readonly name: string }; readonly placeId: Id<"place"> | null };

const one = (part: Stocked | null): readonly PartTaken[] =>
  part === null || part.placeId === null
    ? []
    : [{ kind: "counted", modelId: part.model.id, placeId: part.placeId, quantity: 1, name: part.model.name }];

/** The head, unless it is the club's own; a prepared piece in place of a raw shaft, which brings its sleeve if it has one. */
function partsOfPlan(plan: ClubPlan): readonly PartTaken[] {
  const { head, sleeve } = plan.choice;
  const takesSleeve = plan.kind === "build" && sleeve !== null && plan.piece?.sleeve == null;
  return [
    ...(plan.kind === "reshaft" ? [] : [{ kind: "head" as const, id: head.id, name: `head ${head.serial}` }]),
    ...(plan.piece === null ? one(plan.shaft) : [{ kind: "piece" as const, id: plan.piece.id, name: `prepared ${plan.piece.model.name}` }]),
    ...one(plan.grip),
    ...plan.weights.map(({ model, placeId, count }) => ({
      kind: "counted" as const,
      modelId: model.id,
      placeId,
      quantity: count,
      name: model.name,
    })),
    ...(takesSleeve ? [{ kind: "counted" as const, modelId: sleeve.id, placeId: null, quantity: 1, name: sleeve.name }] : []),
  ];
}

/** All that a sheet takes from stock: for a new club its parts, for a regrip the grip, for other work nothing. */
export function partsOfSheet({ plan, service = null }: Pick<SheetPlan, "plan" | "service">): readonly PartTaken[] {
  return plan !== null ? partsOfPlan(plan) : service?.kind === "regrip" ? one(service.grip) : [];
}
