import { inRange } from "../quantity/inRange.ts";
import { type Grams, grams, type Millimetres, MM_PER_INCH, millimetres } from "../quantity/units.ts";

/** A strip by its measures, the way a sheet of lead is sold. */
interface LeadByMeasure {
  readonly widthMm: Millimetres;
  readonly thicknessMm: Millimetres;
  readonly densityGPerCm3: number;
}

/** A strip as weighed: the better knowledge of the two. */
interface LeadByScale {
  readonly weighedG: Grams;
  readonly weighedLengthMm: Millimetres;
}

export type LeadTape = LeadByMeasure | LeadByScale;

/**
 * Pure lead, half an inch wide and 0.14 mm thick: 0.512 g to the inch. Published rules, 4 to 4 1/2 in to 2 g, say 0.44
 * to 0.50: adhesive and thickness vary, so weigh a length of the roll at hand and pass that.
 */
export const defaultLeadTape: LeadByMeasure = {
  widthMm: millimetres(MM_PER_INCH / 2),
  thicknessMm: millimetres(0.14),
  densityGPerCm3: 11.34,
};

const CUBIC_MM_PER_CM3 = 1000;
const LONGEST_MM = 10_000;

function gramsPerMm(tape: LeadTape): number {
  if ("weighedG" in tape) {
    const weighedG = inRange(tape.weighedG, { field: "weighedG", unit: "g", min: 0.001, max: 1000 });
    return weighedG / inRange(tape.weighedLengthMm, { field: "weighedLengthMm", unit: "mm", min: 1, max: LONGEST_MM });
  }
  const widthMm = inRange(tape.widthMm, { field: "widthMm", unit: "mm", min: 0.1, max: 200 });
  const thicknessMm = inRange(tape.thicknessMm, { field: "thicknessMm", unit: "mm", min: 0.01, max: 5 });
  const density = inRange(tape.densityGPerCm3, { field: "densityGPerCm3", unit: "g/cm³", min: 0.5, max: 25 });
  return (widthMm * thicknessMm * density) / CUBIC_MM_PER_CM3;
}

/**
 * What a length of lead tape weighs.
 *
 *     m = ρ · w · t · l     or, of a weighed roll,     m = m₀ · l / l₀
 *
 * Exact as far as the measures are; a roll weighs 2 to 15 % less than its printed measures say.
 *
 * @param length - l in mm
 * @param tape - w and t in mm, ρ in g/cm³; or m₀ in g of l₀ in mm
 * @returns g
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible
 * @see fixtures/published/leadTape.json
 */
export function leadTapeMass(length: Millimetres, tape: LeadTape = defaultLeadTape): Grams {
  return grams(inRange(length, { field: "lengthMm", unit: "mm", min: 0, max: LONGEST_MM }) * gramsPerMm(tape));
}

/**
 * How much lead tape to cut for a mass.
 *
 *     l = m / (ρ · w · t)     or, of a weighed roll,     l = l₀ · m / m₀
 *
 * Exact as far as the measures are; the scale has the last word.
 *
 * @param mass - m in g
 * @param tape - w and t in mm, ρ in g/cm³; or m₀ in g of l₀ in mm
 * @returns mm
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible
 * @see fixtures/published/leadTape.json
 */
export function leadTapeLength(mass: Grams, tape: LeadTape = defaultLeadTape): Millimetres {
  return millimetres(inRange(mass, { field: "massG", unit: "g", min: 0, max: 1000 }) / gramsPerMm(tape));
}
