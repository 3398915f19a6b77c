import { eq } from "drizzle-orm";
import type { Id, Instant } from "../../core/kinds.ts";
import { partModel } from "../schema/stock.ts";
import type { Reader, Tx } from "../write.ts";

export type PartModelRow = typeof partModel.$inferSelect;
export type PartKind = PartModelRow["kind"];

/** A model's facts as stored; version 1 is the only one so far. */
export function factsOf<M>(row: Pick<PartModelRow, "id" | "name" | "facts">): M {
  return { ...JSON.parse(row.facts), id: row.id, name: row.name } as M;
}

/** Lists the models of a kind, each with the code word it hides behind while unreleased. */
export function modelsOf<M>(reader: Reader, kind: PartKind): readonly (M & { readonly restrictedCode: string | null })[] {
  return reader
    .select()
    .from(partModel)
    .where(eq(partModel.kind, kind))
    .all()
    .map((row) => ({ ...factsOf<M>(row), restrictedCode: row.restrictedCode }));
}

/** Adds a model of a kind of part with its facts. */
export function addPartModel(
  tx: Tx,
  row: { readonly kind: PartKind; readonly name: string; readonly facts: object; readonly restrictedCode: string | null },
): Id<"partModel"> {
  return tx
    .insert(partModel)
    .values({ ...row, facts: JSON.stringify({ version: 1, ...row.facts }) })
    .returning({ id: partModel.id })
    .get().id;
}

/** Notes what the list for play says of a head's model. */
export function setListedForPlay(tx: Tx, modelId: Id<"partModel">, listed: { readonly listedForPlay: boolean; readonly listedAt: Instant }): void {
  const row = tx.select({ facts: partModel.facts }).from(partModel).where(eq(partModel.id, modelId)).get();
  tx.update(partModel)
    .set({ facts: JSON.stringify({ ...JSON.parse(row?.facts ?? "{}"), ...listed }) })
    .where(eq(partModel.id, modelId))
    .run();
}
