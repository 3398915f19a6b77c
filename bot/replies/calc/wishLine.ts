import type { Json, Line } from "../../chat/types.ts";
import { line } from "../card.ts";
import { shown } from "../shown.ts";
import { pointsWords } from "./calcNumbers.ts";

/** So many points more or fewer, and the mass at each place that brings them, below 0 where it has to come off. */
export interface PointsWish {
  readonly points: number;
  readonly headG: number;
  readonly tipG: number;
  readonly buttG: number;
}

const change = (massG: number, place: string): string => `${shown.mass(Math.abs(massG))} ${massG < 0 ? "off" : "in"} the ${place}`;

export const wishLine = ({ points, headG, tipG, buttG }: PointsWish, name = ""): Line =>
  line({ strong: `${name}${pointsWords(points)}: ` }, `${change(headG, "head")}, or ${change(tipG, "tip")}, or ${change(buttG, "butt")}`);

export const wishData = ({ points, headG, tipG, buttG }: PointsWish): { readonly [key: string]: Json } => ({
  wishedPoints: points,
  wishedHeadG: headG,
  wishedTipG: tipG,
  wishedButtG: buttG,
});
