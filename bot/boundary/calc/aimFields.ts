import { handField } from "./handField.ts";

const METRES_PER_YARD = 0.9144;

export const aimFields = {
  "squared loft": { kind: "number", measure: "angle", min: 0, max: 75, usual: 46, turns: "squaredLoftDeg", also: ["loft", "true loft", "true"] },
  "lie error": { kind: "number", measure: "angle", min: -15, max: 15, usual: 2, turns: "seatedLieDeg", bare: true, also: ["lie"] },
  distance: { kind: "number", measure: "distance", min: METRES_PER_YARD, max: 450 * METRES_PER_YARD, bare: true, also: ["carry", "at"] },
  hand: handField,
} as const;
