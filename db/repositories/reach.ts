import type { Id } from "../../core/kinds.ts";
import type { PlaceRow } from "./places.ts";

/** Whose hands are asked for, and what is looked past. */
export interface Reach {
  readonly truckId: Id<"truck">;
  readonly playerId: Id<"player">;
  /** Orders whose own holds do not count: they are being planned anew. */
  readonly pastOrders?: readonly Id<"order">[];
}

/** Where a thing lies, as said in a truck: of another truck it is said. */
export function placeWords({ place, truckName }: { readonly place: PlaceRow; readonly truckName: string | null }, truckId: Id<"truck">): string {
  return place.truckId === truckId || place.truckId === null ? place.label : `${place.label}, truck ${truckName ?? place.truckId}`;
}

/** It lies in the bin of another player. */
export const isOthers = ({ playerId }: PlaceRow, mine: Id<"player">): boolean => playerId !== null && playerId !== mine;
