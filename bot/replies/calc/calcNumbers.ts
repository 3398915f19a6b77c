import { shown } from "../shown.ts";

/** A length in the reader's own unit. */
export const lengthWords = (mm: number, unit: "in" | "mm"): string => (unit === "in" ? `${shown.length(mm)} in` : shown.length(mm, "mm"));

/** Small differences as a bench can use them, with their sign: `+0.6`, `-2.7`, `0`. */
export function signed(value: number, digits = 1): string {
  const rounded = Number(value.toFixed(digits));
  return `${rounded > 0 ? "+" : ""}${rounded === 0 ? 0 : rounded.toFixed(digits)}`;
}

/** Swing-weight points to the quarter a bench can hold: `+2`, `-1.25`. */
export const quarters = (points: number): string => {
  const rounded = Math.round(points * 4) / 4;
  return `${rounded > 0 ? "+" : ""}${rounded === 0 ? 0 : rounded}`;
};

/** `+2 points`, `+1 point`. */
export const pointsWords = (points: number): string => {
  const words = quarters(points);
  return `${words} ${/^[+-]?1$/.test(words) ? "point" : "points"}`;
};

/** Inertia as a bench can hold it. */
export const inertia = (kgCm2: number): string => `${Math.round(kgCm2)} kg·cm²`;
