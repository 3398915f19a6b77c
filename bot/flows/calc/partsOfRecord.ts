import type { SpecClub } from "../../../core/bag/specClub.ts";
import type { GripModel, HeadModel, ShaftModel, SleeveModel } from "../../../core/buildSheet/parts.ts";
import { modelsOf } from "../../../db/repositories/partModels.ts";
import type { Reader } from "../../../db/write.ts";

export interface PartsOfRecord {
  readonly head: HeadModel | null;
  readonly sleeve: SleeveModel | null;
  readonly shaft: ShaftModel | null;
  readonly grip: GripModel | null;
}

/** The models a club of the record was built of, as far as they are known here. */
export function partsOfRecord(reader: Reader, club: SpecClub): PartsOfRecord {
  const named = <M extends { readonly name: string }>(kind: keyof PartsOfRecord, name: string | null): M | null =>
    modelsOf<M>(reader, kind).find((model) => model.name === name) ?? null;
  return {
    head: named("head", club.headModel),
    sleeve: named("sleeve", club.sleeveModel),
    shaft: named("shaft", club.shaftModel),
    grip: named("grip", club.gripModel),
  };
}
