import type { SpecClub } from "../../../core/bag/specClub.ts";
import type { GripModel, HeadModel, ShaftModel } from "../../../core/buildSheet/parts.ts";
import { modelsOf } from "../../../db/repositories/stock.ts";
import type { Context } from "../../chat/context.ts";

export interface PartsOfRecord {
  readonly head: HeadModel | null;
  readonly shaft: ShaftModel | null;
  readonly grip: GripModel | null;
}

/** The models a club of the record was built of, as far as they are known here. */
export function partsOfRecord(club: SpecClub, { read }: Context): PartsOfRecord {
  const named = <M extends { readonly name: string }>(kind: "head" | "shaft" | "grip", name: string | null): M | null =>
    read((reader) => modelsOf<M>(reader, kind)).find((model) => model.name === name) ?? null;
  return { head: named("head", club.headModel), shaft: named("shaft", club.shaftModel), grip: named("grip", club.gripModel) };
}
