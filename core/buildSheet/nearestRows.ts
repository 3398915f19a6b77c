import type { Stocked } from "./parts.ts";

interface Near<M> {
  readonly row: Stocked<M>;
  readonly score: number;
}

/** Each model once, nearest first: what fits less well last, then by score, the player's own bin first among equals. */
export function nearestRows<M extends { readonly name: string }, N extends Near<M>>(near: readonly N[], isLast: (one: N) => boolean): readonly N[] {
  const sorted = near.toSorted(
    (one, other) =>
      Number(isLast(one)) - Number(isLast(other)) ||
      one.score - other.score ||
      (one.row.model.name === other.row.model.name ? 0 : one.row.model.name < other.row.model.name ? -1 : 1) ||
      Number(other.row.inPlayersBin) - Number(one.row.inPlayersBin) ||
      one.row.placeId - other.row.placeId,
  );
  const seen = new Set<string>();
  return sorted.filter(({ row }) => !seen.has(row.model.name) && seen.add(row.model.name));
}
