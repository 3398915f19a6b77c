import type { ComparedQuantity } from "../../../core/bag/checkTolerances.ts";
import { shown } from "../shown.ts";
import { inertia, lengthWords, quarters } from "./calcNumbers.ts";

type LengthUnit = "in" | "mm";

/** How a compared quantity is told to people. */
interface ComparedWords {
  readonly name: string;
  readonly value: (value: number, unit: LengthUnit) => string;
  /** A difference, a tolerance or a gauge error, without its sign. */
  readonly amount: (value: number, unit: LengthUnit) => string;
  /** What more of it is called, and less of it. */
  readonly more: string;
  readonly less: string;
}

const tenths = (value: number): string => (Math.round(value * 10) / 10).toFixed(1);
const degreesOf = (value: number): string => `${Number(value.toFixed(2))}°`;
const mm = (value: number): string => `${tenths(value)} mm`;
const angle = (name: string, more: string, less: string): ComparedWords => ({ name, value: shown.angle, amount: degreesOf, more, less });
const mass = (name: string): ComparedWords => ({ name, value: shown.mass, amount: shown.mass, more: "heavier", less: "lighter" });
const diameter = (name: string): ComparedWords => ({
  name,
  value: (value, unit) => (unit === "in" ? `${(value / 25.4).toFixed(3)} in` : `${value.toFixed(2)} mm`),
  amount: (value, unit) => (unit === "in" ? `${(value / 25.4).toFixed(3)} in` : `${value.toFixed(2)} mm`),
  more: "thicker",
  less: "thinner",
});

export const comparedWords: Readonly<Record<ComparedQuantity, ComparedWords>> = {
  squaredLoftDeg: angle("Squared loft", "weaker", "stronger"),
  soledFaceDeg: { ...angle("Soled face", "more open", "more closed"), value: shown.face },
  seatedLieDeg: angle("Seated lie", "more upright", "flatter"),
  bounceDeg: angle("Bounce", "more", "less"),
  lengthMm: { name: "Length", value: lengthWords, amount: mm, more: "longer", less: "shorter" },
  swingWeightPoints: {
    name: "Swing weight",
    value: shown.swing,
    amount: (value) => {
      const points = value < 0.5 ? tenths(value) : quarters(value).replace("+", "");
      return `${points} ${points === "1" ? "point" : "points"}`;
    },
    more: "heavier",
    less: "lighter",
  },
  totalMassG: mass("Total"),
  headMassG: mass("Head"),
  wraps: { name: "Wraps", value: String, amount: String, more: "more", less: "fewer" },
  balancePointMm: { name: "Balance from the cap", value: lengthWords, amount: mm, more: "nearer the head", less: "nearer the grip" },
  inertiaKgCm2: { name: "Inertia", value: inertia, amount: inertia, more: "more", less: "less" },
  frequencyCpm: {
    name: "Frequency",
    value: (value) => `${Math.round(value)} cpm`,
    amount: (value) => `${tenths(value)} cpm`,
    more: "stiffer",
    less: "softer",
  },
  gripAt2InMm: diameter("Grip 2 in down"),
  gripAt6InMm: diameter("Grip 6 in down"),
  offsetMm: { name: "Offset", value: mm, amount: mm, more: "more", less: "less" },
};
