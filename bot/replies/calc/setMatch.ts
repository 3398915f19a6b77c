import type { ClubName } from "../../../core/kinds.ts";
import type { Json } from "../../chat/types.ts";
import { clubWords, shown } from "../shown.ts";
import { inertia } from "./calcNumbers.ts";

interface SetMatchRow {
  readonly club: ClubName;
  readonly before: number;
  /** To add to the head in whole steps; below 0 to take off. */
  readonly massG: number;
  readonly exactMassG: number;
  readonly after: number;
}

/** A set brought to one swing weight in points, or to one inertia in kg·cm². */
export interface SetMatch {
  readonly quantity: "swingWeightPoints" | "inertiaKgCm2";
  readonly target: number;
  /** Nobody named the target: it is the middle of the set. */
  readonly isMiddle: boolean;
  readonly rows: readonly SetMatchRow[];
  readonly spreadBefore: number;
  readonly spreadAfter: number;
}

export const setValue = (quantity: SetMatch["quantity"], value: number): string =>
  quantity === "swingWeightPoints" ? shown.swing(value) : inertia(value);

/** `add 2 g`, `take 0.5 g off`, `as it is`. */
export const massChange = (massG: number): string =>
  massG === 0 ? "as it is" : massG > 0 ? `add ${shown.mass(massG)}` : `take ${shown.mass(-massG)} off`;

const spread = (quantity: SetMatch["quantity"], value: number): string =>
  quantity === "swingWeightPoints" ? `${Math.round(value * 4) / 4} points` : inertia(value);

export const spreadWords = ({ quantity, spreadBefore, spreadAfter }: SetMatch): string =>
  `spread ${spread(quantity, spreadBefore)} now, ${spread(quantity, spreadAfter)} after`;

/** The whole match in one line. */
export const matchWords = (match: SetMatch): string =>
  `${match.rows.map(({ club, massG }) => `${clubWords(club)} ${massChange(massG)}`).join(", ")}; ${spreadWords(match)}`;

export function matchData({ quantity, target, rows, spreadBefore, spreadAfter }: SetMatch): { readonly [key: string]: Json } {
  const unit = quantity === "swingWeightPoints" ? "Points" : "KgCm2";
  return {
    [`target${unit}`]: target,
    [`spreadBefore${unit}`]: spreadBefore,
    [`spreadAfter${unit}`]: spreadAfter,
    clubs: rows.map(({ club, before, massG, exactMassG, after }) => ({
      club,
      [`before${unit}`]: before,
      massChangeG: massG,
      exactMassChangeG: exactMassG,
      [`after${unit}`]: after,
    })),
  };
}
