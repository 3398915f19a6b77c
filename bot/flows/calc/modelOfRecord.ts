import type { ClubRef } from "../../boundary/calc/clubRefAt.ts";
import type { Understood } from "../../boundary/calc/fields.ts";
import type { Context } from "../../chat/context.ts";
import type { Reply } from "../../chat/types.ts";
import { lackingReply } from "../../replies/calc/lackingReply.ts";
import { type FoundClub, findClub } from "./findClub.ts";
import { recordedClub } from "./recordedClub.ts";
import type { ModelledClub } from "./typedClub.ts";

type Found = Extract<FoundClub, { kind: "found" }>;
type RecordModel =
  | ({ readonly kind: "modelled"; readonly found: Found; readonly inputs: readonly Understood[] } & ModelledClub)
  | { readonly kind: "refused"; readonly reply: Reply };

/** A club of the record by its parts; or the answer why it cannot be added up. */
export function modelOfRecord(view: string, ref: ClubRef, inputs: readonly Understood[], context: Context): RecordModel {
  const found = findClub(ref, context);
  if (found.kind === "refused") return found;
  const model = context.read((reader) => recordedClub(reader, found.club));
  return model.kind === "modelled"
    ? { ...model, found, inputs: [found.input, ...inputs, ...model.assumed] }
    : {
        kind: "refused",
        reply: lackingReply(view, { named: found.shown, inputs: [found.input, ...inputs], lacking: model.lacking, measured: found.club }),
      };
}
