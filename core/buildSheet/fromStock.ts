import type { Stocked } from "./parts.ts";
import type { Shortage } from "./plan.ts";

/** How many of the nearest are named. */
export const NEAREST_SHOWN = 3;

const words = (name: string) => new Set(name.toLowerCase().split(/\s+/));

/** How many words two model names share: the line, the weight, the flex. */
function sharedWords(one: string, other: string): number {
  const wanted = words(one);
  return [...words(other)].filter((word) => wanted.has(word)).length;
}

/** The stocked part of that name, the player's own bin first; null when none is free. */
export function fromStock<M extends { readonly name: string }>(stock: readonly Stocked<M>[], name: string): Stocked<M> | null {
  return stock
    .filter(({ model, free }) => model.name === name && free > 0)
    .reduce<Stocked<M> | null>((best, row) => {
      const earlier = best === null || (row.inPlayersBin === best.inPlayersBin ? row.placeId < best.placeId : row.inPlayersBin);
      return earlier ? row : best;
    }, null);
}

/** The names in stock that share most words with the one wanted. */
export function nearestNames<M extends { readonly name: string }>(wanted: string, stock: readonly Stocked<M>[]): readonly string[] {
  const names = [...new Set(stock.filter(({ free }) => free > 0).map(({ model }) => model.name))];
  return names.sort((one, other) => sharedWords(wanted, other) - sharedWords(wanted, one) || (one < other ? -1 : 1)).slice(0, NEAREST_SHOWN);
}

/** A part that is not in reach, with the names in reach that share most words with it. */
export function shortageOf<M extends { readonly name: string }>(part: Shortage["part"], wanted: string, stock: readonly Stocked<M>[]): Shortage {
  return { part, wanted, nearest: nearestNames(wanted, stock) };
}
