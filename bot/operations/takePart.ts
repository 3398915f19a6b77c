import type { PartsInReach, Stocked } from "../../core/buildSheet/parts.ts";
import type { reserve } from "../../db/repositories/holds.ts";
import type { PartTaken } from "./partsOfSheet.ts";

/** What holds one part for a sheet. */
type Hold = Omit<Parameters<typeof reserve>[1], "sheetId">;

interface Taken {
  readonly hold: Hold;
  readonly left: PartsInReach;
}

type Counted = Extract<PartTaken, { kind: "counted" }>;
type CountedStock = "shafts" | "grips" | "sleeves" | "weights";

function takeCounted(parts: PartsInReach, kind: CountedStock, part: Counted): Taken | null {
  const stock: readonly Stocked<{ readonly id: Counted["modelId"] }>[] = parts[kind];
  const row = stock.find(
    ({ model, placeId, free }) => model.id === part.modelId && (part.placeId === null || placeId === part.placeId) && free >= part.quantity,
  );
  if (row === undefined) {
    return null;
  }
  const left = stock.map((other) => (other === row ? { ...row, free: row.free - part.quantity } : other));
  return { hold: { partModelId: part.modelId, placeId: row.placeId, quantity: part.quantity }, left: { ...parts, [kind]: left } };
}

/** Takes one part out of those in reach: what holds it, and what is left; null when it is gone. */
export function takePart(parts: PartsInReach, part: PartTaken): Taken | null {
  switch (part.kind) {
    case "head": {
      const isHere = parts.heads.some(({ id, here }) => here && id === part.id);
      return isHere ? { hold: { headId: part.id }, left: { ...parts, heads: parts.heads.filter(({ id }) => id !== part.id) } } : null;
    }
    case "piece": {
      const { pieces = [] } = parts;
      const isHere = pieces.some(({ id }) => id === part.id);
      return isHere ? { hold: { pieceId: part.id }, left: { ...parts, pieces: pieces.filter(({ id }) => id !== part.id) } } : null;
    }
    case "counted":
      return (
        takeCounted(parts, "shafts", part) ??
        takeCounted(parts, "grips", part) ??
        takeCounted(parts, "sleeves", part) ??
        takeCounted(parts, "weights", part)
      );
  }
}
